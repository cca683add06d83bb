using Microsoft.AspNetCore.Components;
using Purlin.Field.Device;

namespace Purlin.Field.Shell;

/// <summary>
/// A part of a screen that draws itself again on what happens elsewhere: another window wrote, something was sent. What fails in that is seen
/// on the screen like any other failure, and not lost with a task that nobody waits for.
/// </summary>
public abstract class LiveView : ComponentBase, IDisposable
{
    private bool isGone;

    [Inject] protected Phone Phone { get; set; } = null!;

    /// <summary>Does this on the screen's own thread and draws again.</summary>
    protected void Follow(Func<Task> work) => _ = SeenAsync(work);

    /// <summary>Does this on the screen's own thread and draws again.</summary>
    protected void Follow(Action work) => Follow(() =>
    {
        work();
        return Task.CompletedTask;
    });

    private async Task SeenAsync(Func<Task> work)
    {
        try
        {
            await InvokeAsync(async () =>
            {
                if (isGone) return;
                await work();
                if (!isGone) StateHasChanged();
            });
        }
        catch (Exception failed) when (!isGone)
        {
            await DispatchExceptionAsync(failed);
        }
    }

    /// <summary>Called when the part goes away.</summary>
    protected virtual void OnLeaving() { }

    /// <inheritdoc/>
    public void Dispose()
    {
        OnLeaving();
        isGone = true;
        GC.SuppressFinalize(this);
    }
}
