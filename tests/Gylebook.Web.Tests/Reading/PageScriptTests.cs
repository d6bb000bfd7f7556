using Gylebook.Web.Reading;
using Microsoft.JSInterop;

namespace Gylebook.Web.Tests.Reading;

/// <summary>A page that is left before its script is there is left in peace.</summary>
public sealed class PageScriptTests
{
    [Fact]
    public async Task A_page_left_while_its_script_comes_gives_it_nothing()
    {
        SlowBrowser browser = new();
        PageScript script = new(browser, "./page.js");
        Task entering = script.EnterAsync("root");
        script.Leave();
        browser.Module.SetResult(browser);
        await entering;
        Assert.Equal(["import", "dispose"], browser.Asked);
    }

    [Fact]
    public async Task A_script_that_finds_the_page_gone_is_no_trouble_and_one_that_fails_on_it_is()
    {
        SlowBrowser gone = new();
        gone.Module.SetResult(gone);
        PageScript left = new(gone, "./page.js");
        Task entering = left.EnterAsync("root");
        left.Leave();
        gone.Entered.SetException(new JSException("root is null"));
        await entering;

        SlowBrowser there = new();
        there.Module.SetResult(there);
        Task failing = new PageScript(there, "./page.js").EnterAsync("root");
        there.Entered.SetException(new JSException("a bug"));
        await Assert.ThrowsAsync<JSException>(() => failing);
    }

    [Fact]
    public async Task However_often_a_page_is_drawn_its_script_comes_once()
    {
        SlowBrowser browser = new();
        PageScript script = new(browser, "./page.js");
        Task first = script.EnterAsync("root"), second = script.EnterAsync("root");
        browser.Module.SetResult(browser);
        browser.Entered.SetResult(true);
        await Task.WhenAll(first, second);
        Assert.Equal(["import", "enter"], browser.Asked);
    }

    /// <summary>A browser that answers when it is told to, and its one module.</summary>
    private sealed class SlowBrowser : IJSRuntime, IJSObjectReference
    {
        public List<string> Asked { get; } = [];

        public TaskCompletionSource<object> Module { get; } = new();

        public TaskCompletionSource<object> Entered { get; } = new();

        public async ValueTask<TValue> InvokeAsync<TValue>(string identifier, object?[]? args)
        {
            Asked.Add(identifier);
            if (identifier == "import")
            {
                return (TValue)await Module.Task;
            }

            await Entered.Task;
            return default!;
        }

        public ValueTask<TValue> InvokeAsync<TValue>(string identifier, CancellationToken cancellationToken, object?[]? args) =>
            InvokeAsync<TValue>(identifier, args);

        public ValueTask DisposeAsync()
        {
            Asked.Add("dispose");
            return ValueTask.CompletedTask;
        }
    }
}
