using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Purlin.Field.Device;
using Purlin.Field.Visits;

namespace Purlin.Field.Shell;

/// <summary>A part of a screen that shows the open inspection and draws itself again whenever that changes.</summary>
public abstract class VisitView : ComponentBase, IDisposable
{
    [Inject] protected OpenVisit Visit { get; set; } = null!;

    [Inject] protected Phone Phone { get; set; } = null!;

    [Inject] protected Hand Hand { get; set; } = null!;

    protected override void OnInitialized() => Visit.Changed += Draw;

    /// <summary>Called when the inspection changed, before drawing.</summary>
    protected virtual void OnVisitChanged() { }

    /// <summary>Called when the part goes away.</summary>
    protected virtual void OnLeaving() { }

    private void Draw() => _ = InvokeAsync(() =>
    {
        OnVisitChanged();
        StateHasChanged();
    });

    public void Dispose()
    {
        Visit.Changed -= Draw;
        OnLeaving();
        GC.SuppressFinalize(this);
    }
}
