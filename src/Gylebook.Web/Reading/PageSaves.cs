namespace Gylebook.Web.Reading;

/// <summary>What a page has yet to bring to the disk: texts that wait for a pause, saves that run, saves that failed.</summary>
/// <remarks>
/// The page's script asks here before it takes a typed text for stored: see <c>docs/decisions/0015-typed-text.md</c>. One for
/// each page open in a browser, used on the page's own thread.
/// </remarks>
/// <param name="here">The address of the page now, from the site's base.</param>
public sealed class PageSaves(Func<string> here)
{
    private readonly Dictionary<string, string> _failed = new(StringComparer.Ordinal);
    private TaskCompletionSource? _idle;
    private int _running;

    /// <summary>For a page that nobody asks.</summary>
    public static PageSaves Unasked() => new(() => "");

    /// <summary>A save begins, or the pause before it.</summary>
    public Run Begin()
    {
        _running++;
        return new Run(this, here());
    }

    /// <summary>The page was read from the book: what failed to be saved before is in its fields no more.</summary>
    public void Opened() => _failed.Remove(here());

    /// <summary>Something on this page failed, whatever it was: what was typed is not known to be stored.</summary>
    /// <param name="why">In words.</param>
    public void Fail(string why) => _failed[here()] = why;

    /// <summary>Waits until nothing runs any more.</summary>
    /// <returns>Where a save failed, by the address of its page, and why.</returns>
    public async Task<IReadOnlyDictionary<string, string>> SettledAsync()
    {
        while (_running > 0)
        {
            _idle ??= new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
            await _idle.Task;
        }

        return new Dictionary<string, string>(_failed, StringComparer.Ordinal);
    }

    private void Note(string page, string? why)
    {
        if (why is null)
        {
            _failed.Remove(page);
        }
        else
        {
            _failed[page] = why;
        }
    }

    /// <summary>One save. It failed unless it says that it went well: so an exception leaves no text behind as stored.</summary>
    public sealed class Run : IDisposable
    {
        private readonly PageSaves _saves;
        private readonly string _page;
        private string? _why = "The page failed before it could save.";
        private bool _hasNoWord;

        internal Run(PageSaves saves, string page) => (_saves, _page) = (saves, page);

        /// <summary>It is over.</summary>
        /// <param name="why">Why nothing was stored; null when it was.</param>
        public void Ends(string? why) => _why = why;

        /// <summary>Another run has the last word on what was to be saved here.</summary>
        public void LeavesItToOthers() => _hasNoWord = true;

        /// <inheritdoc/>
        public void Dispose()
        {
            if (!_hasNoWord)
            {
                _saves.Note(_page, _why);
            }

            if (--_saves._running == 0)
            {
                _saves._idle?.SetResult();
                _saves._idle = null;
            }
        }
    }
}
