using Gylebook.Recipes.Lots;

namespace Gylebook.Recipes.Interchange.OpenFormats.Arriving;

/// <summary>What one file brings while it is read: the sheets its lines need, each once, and what happens on the way.</summary>
internal sealed class Landing(TravelList travels, ArrivalWishes wishes)
{
    private readonly Dictionary<string, (LarderSheet Sheet, string From)> _sheets = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _idOfText = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _called = new(StringComparer.Ordinal);

    public TravelList Travels => travels;

    public ArrivalWishes Wishes => wishes;

    /// <summary>The sheets, with where each stood.</summary>
    public IEnumerable<(LarderSheet Sheet, string From)> Sheets => _sheets.Values;

    /// <summary>What a sheet is called; null when there is none of that id.</summary>
    public string? NameOf(string id) => _sheets.TryGetValue(id, out var found) ? found.Sheet.Name : null;

    /// <summary>Takes a sheet; one that says the same is there once.</summary>
    /// <returns>The id under which it lies.</returns>
    public string Take(LarderSheet sheet, string from)
    {
        // Text for text: records compare their lists by reference.
        string text = LarderFile.Write(sheet);
        if (_idOfText.TryGetValue(text, out string? known))
        {
            return known;
        }

        int number = _called[sheet.Id] = _called.GetValueOrDefault(sheet.Id) + 1;
        LarderSheet called = number == 1 ? sheet : sheet with { Id = Invariant($"{sheet.Id}-{number}"), Name = Invariant($"{sheet.Name} {number}") };
        _sheets[called.Id] = (called, from);
        _idOfText[text] = called.Id;
        return called.Id;
    }
}
