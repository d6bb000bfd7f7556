using Gylebook.Recipes.Forms;

namespace Gylebook.Recipes.Kits;

/// <summary>How wort is cooled.</summary>
public enum ChillerKind
{
    /// <summary>A coil in the kettle.</summary>
    Immersion,

    /// <summary>Wort and water in opposite flow, in a tube within a hose.</summary>
    Counterflow,

    /// <summary>The same between plates.</summary>
    Plate,

    /// <summary>Nothing: a closed vessel cools by itself.</summary>
    None,
}

/// <summary>The words a kit file has for kinds of chiller.</summary>
public static class ChillerKinds
{
    private static readonly WordTable<ChillerKind> Table = new(
        (ChillerKind.Immersion, "immersion"), (ChillerKind.Counterflow, "counterflow"), (ChillerKind.Plate, "plate"), (ChillerKind.None, "none"));

    /// <summary>All words.</summary>
    public static IEnumerable<string> Words => Table.Words;

    /// <summary>The kind a word means; null when it is none of them.</summary>
    public static ChillerKind? Of(string word) => Table.Value(word);

    /// <summary>Whether wort runs through it out of a kettle that stays hot.</summary>
    public static bool RunsThrough(this ChillerKind? kind) => kind is ChillerKind.Counterflow or ChillerKind.Plate;
}
