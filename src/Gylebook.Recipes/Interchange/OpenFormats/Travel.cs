namespace Gylebook.Recipes.Interchange.OpenFormats;

/// <summary>What became of something on its way from one format to another.</summary>
public enum TravelKind
{
    /// <summary>It was not there, and a usual value was taken.</summary>
    Defaulted,

    /// <summary>It says the same in another unit or in other words.</summary>
    Converted,

    /// <summary>It was written wrongly, and what was meant was clear.</summary>
    Repaired,

    /// <summary>It stays behind: there is no place for it, or it cannot be read.</summary>
    Left,
}

/// <summary>Something that did not travel as it stood.</summary>
/// <param name="Kind">What became of it.</param>
/// <param name="Where">Its field, as a path: in the file that is read, or in the recipe that is written.</param>
/// <param name="Words">What happened, in plain words, with the value.</param>
public sealed record Travel(TravelKind Kind, string Where, string Words)
{
    /// <summary>The kind in a word: <c>left</c>.</summary>
    public string Did => Kind switch
    {
        TravelKind.Defaulted => "defaulted",
        TravelKind.Converted => "converted",
        TravelKind.Repaired => "repaired",
        _ => "left",
    };
}

/// <summary>What happened on the way, as it happens, up to a number a person could still want to read.</summary>
internal sealed class TravelList
{
    private const int Most = 1000;
    private const int MostItems = 20_000;
    private readonly List<Travel> _all = [];
    private int _more, _items;

    /// <summary>All of it; the last one tells of those that are not told.</summary>
    public IReadOnlyList<Travel> All => _more == 0 ? _all : [.. _all, new Travel(TravelKind.Left, "", Invariant($"{_more} more things did not travel as they stood; only the first {Most} are told"))];

    /// <summary>Whether one more item of a list may be read; a file may be large, and what is made of it must not be larger.</summary>
    public bool MayReadOne() => ++_items <= MostItems;

    public void Default(string where, string words) => Add(TravelKind.Defaulted, where, words);

    public void Convert(string where, string words) => Add(TravelKind.Converted, where, words);

    public void Repair(string where, string words) => Add(TravelKind.Repaired, where, words);

    public void Leave(string where, string words) => Add(TravelKind.Left, where, words);

    private void Add(TravelKind kind, string where, string words)
    {
        if (_all.Count < Most)
        {
            _all.Add(new Travel(kind, where, words));
        }
        else
        {
            _more++;
        }
    }
}
