using Microsoft.AspNetCore.Components;
using Purlin.Field.Shell;

namespace Purlin.Field.MyWording;

/// <summary>A part of a screen that shows own wording and draws itself again when that or the open inspection changes.</summary>
public abstract class WordingView : VisitView
{
    [Inject] protected OwnBook Own { get; set; } = null!;

    protected override void OnInitialized()
    {
        base.OnInitialized();
        Own.Changed += Again;
    }

    protected override void OnLeaving()
    {
        base.OnLeaving();
        Own.Changed -= Again;
    }

    private void Again() => Follow(OnVisitChanged);
}
