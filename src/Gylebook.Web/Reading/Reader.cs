using Gylebook.Pictures;
using Gylebook.Store;
using Gylebook.Web.Layout;

namespace Gylebook.Web.Reading;

/// <summary>Who reads the book: their units, decimal sign and theme. One book, one reader, every tab the same.</summary>
public sealed class Reader
{
    private readonly Book _book;

    private Reader(Book book, IReadOnlyDictionary<string, string> settings)
    {
        _book = book;
        Shown = new Shown(ReaderSettings.Read(settings));
        Theme = Themes.Known(settings.GetValueOrDefault(Themes.Key));
    }

    /// <summary>Tells every tab that units or theme are others now.</summary>
    public event Action? Changed;

    /// <summary>Writes numbers the way this reader wants to see them.</summary>
    public Shown Shown { get; private set; }

    /// <summary>One of <see cref="Themes"/>.</summary>
    public string Theme { get; private set; }

    /// <summary>The reader, as the book remembers them.</summary>
    public static async Task<Reader> OfAsync(Book book, CancellationToken cancellation = default) =>
        new(book, await book.Settings.ListAsync(cancellation));

    /// <summary>Chooses other units, for good.</summary>
    public async Task ChooseAsync(ReaderUnits units)
    {
        IReadOnlyDictionary<string, string> before = ReaderSettings.Write(Shown.Units);
        foreach ((string key, string value) in ReaderSettings.Write(units).Where(setting => before[setting.Key] != setting.Value))
        {
            await _book.Settings.SetAsync(key, value);
        }

        Shown = new Shown(units);
        Changed?.Invoke();
    }

    /// <summary>Chooses another theme, for good.</summary>
    public async Task ChooseThemeAsync(string theme)
    {
        await _book.Settings.SetAsync(Themes.Key, Themes.Known(theme));
        Theme = Themes.Known(theme);
        Changed?.Invoke();
    }
}
