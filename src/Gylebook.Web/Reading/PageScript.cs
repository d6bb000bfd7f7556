using Microsoft.JSInterop;

namespace Gylebook.Web.Reading;

/// <summary>A page's own script in the browser; quiet when the page is left before the script is there.</summary>
/// <param name="runtime">The way to the browser.</param>
/// <param name="file">The module, from the site's base.</param>
public sealed class PageScript(IJSRuntime runtime, string file)
{
    private IJSObjectReference? _module;
    private bool _isAsked;
    private bool _isLeft;

    /// <summary>Brings the module and calls its <c>enter</c>, once however often the page is drawn.</summary>
    /// <param name="arguments">What it is given.</param>
    public async Task EnterAsync(params object?[] arguments)
    {
        if (_isAsked || _isLeft)
        {
            return;
        }

        _isAsked = true;
        try
        {
            _module = await runtime.InvokeAsync<IJSObjectReference>("import", file);
            if (_isLeft)
            {
                await _module.DisposeAsync();
                return;
            }

            await _module.InvokeVoidAsync("enter", arguments);
        }
        catch (Exception gone) when (_isLeft && gone is JSException or JSDisconnectedException or OperationCanceledException or ObjectDisposedException)
        {
            // The page was left meanwhile: what the script was to be given is gone, and nobody misses it.
        }
    }

    /// <summary>The page is left.</summary>
    public void Leave()
    {
        _isLeft = true;
        if (_module is { } module)
        {
            // Not waited for: when the program stops there is nobody left in the browser to answer.
            _ = ReleaseAsync(module);
        }
    }

    private static async Task ReleaseAsync(IJSObjectReference module)
    {
        try
        {
            await module.DisposeAsync();
        }
        catch (Exception gone) when (gone is JSDisconnectedException or OperationCanceledException or ObjectDisposedException)
        {
            // The page is gone, and its script with it.
        }
    }
}
