using Microsoft.AspNetCore.Components;
using Purlin.Field.Visits;

namespace Purlin.Field.Shell;

/// <summary>A part of a screen that shows the open inspection and draws itself again whenever that changes.</summary>
public abstract class VisitView : LiveView
{
    [Inject] protected OpenVisit Visit { get; set; } = null!;

    [Inject] protected Hand Hand { get; set; } = null!;

    /// <inheritdoc/>
    protected override void OnInitialized() => Visit.Changed += Draw;

    /// <summary>Called when the inspection changed, before drawing.</summary>
    protected virtual void OnVisitChanged() { }

    private void Draw() => Follow(OnVisitChanged);

    /// <inheritdoc/>
    protected override void OnLeaving() => Visit.Changed -= Draw;
}
