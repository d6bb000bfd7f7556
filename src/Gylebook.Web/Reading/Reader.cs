using Gylebook.Pictures;
using Microsoft.JSInterop;

namespace Gylebook.Web.Reading;

/// <summary>Who reads this page: their units, decimal sign and theme. They belong to a browser; every tab of it agrees.</summary>
public sealed class Reader
{
    private readonly ReaderChoice _usual;
    private readonly IJSRuntime _script;

    /// <summary>A reader who has not chosen yet.</summary>
    /// <param name="usual">What holds for a browser in which nobody chose.</param>
    /// <param name="script">The way to the browser.</param>
    public Reader(ReaderChoice usual, IJSRuntime script)
    {
        (_usual, _script, Choice) = (usual, script, usual);
        Shown = new Shown(usual.Units);
    }

    /// <summary>The script that keeps a choice in the browser, and hears of those of other tabs.</summary>
    public const string Script = "./Layout/MainLayout.razor.js";

    /// <summary>Tells this page that units or theme are others now.</summary>
    public event Action? Changed;

    /// <summary>What they chose.</summary>
    public ReaderChoice Choice { get; private set; }

    /// <summary>Writes numbers the way this reader wants to see them.</summary>
    public Shown Shown { get; private set; }

    /// <summary>One of <see cref="Layout.Themes"/>.</summary>
    public string Theme => Choice.Theme;

    /// <summary>Takes what the browser has kept.</summary>
    /// <param name="words">From <see cref="ReaderChoice.Words"/>; null when it has nothing.</param>
    public void Recall(string? words) => Take(ReaderChoice.Read(words, _usual));

    /// <summary>Chooses, for this browser and for good.</summary>
    /// <returns>Whether the browser keeps it; if not, it holds until the page is loaded again.</returns>
    public async Task<bool> ChooseAsync(ReaderChoice choice)
    {
        Take(choice);
        try
        {
            await using IJSObjectReference browser = await _script.InvokeAsync<IJSObjectReference>("import", Script);
            return await browser.InvokeAsync<bool>("keep", ReaderChoice.Cookie, choice.Words);
        }
        catch (Exception gone) when (gone is JSDisconnectedException or OperationCanceledException)
        {
            return false;
        }
    }

    private void Take(ReaderChoice choice)
    {
        if (choice != Choice)
        {
            Choice = choice;
            Shown = new Shown(choice.Units);
            Changed?.Invoke();
        }
    }
}
