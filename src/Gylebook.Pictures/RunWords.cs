using Gylebook.Forecast;

namespace Gylebook.Pictures;

/// <summary>What people call the stages and the losses, and where in the run a stage stands.</summary>
internal static class RunWords
{
    /// <summary>
    /// In the order in which things happen. A name behind a stage means that it is drawn; the others happen on the way to
    /// the next one that is. Cooling loses nothing, and so has no place of its own.
    /// </summary>
    private static readonly (string Stage, string? Name)[] Order =
    [
        ("strike", "Strike"), ("mash", "Mash"), ("lift", "Grain out"), ("rinse", null), ("runOff", null), ("topUp", null),
        ("copperUp", "Copper-up"), ("sour", "Soured"), ("boil", null), ("knockOut", "Knock-out"), ("stand", "Stand"), ("chill", null),
        ("cast", "Cast"), ("blend", null), ("split", "Parted"), ("ferment", "Fermented"), ("crash", null), ("rack", "Racked"),
        ("package", "Packaged"), ("condition", null), ("pour", "In the glass"),
    ];

    /// <summary>The first stage of a portion of its own.</summary>
    public const string Parting = "split";

    /// <summary>A stage's place in the run; -1 for one that is not known here.</summary>
    public static int PlaceOf(string stage) => Array.FindIndex(Order, o => o.Stage == stage);

    /// <summary>
    /// Where in the run something goes in: before its stage is over, save at knock-out, which is the moment the flame goes
    /// off, and at racking, where it goes to the racked beer.
    /// </summary>
    public static int PlaceOfAddition(string stage) => PlaceOf(stage) + (stage is "knockOut" or "rack" ? 1 : 0);

    /// <summary>A stage's name; null for one that is not drawn. A stage not known here is drawn under its own name.</summary>
    public static string? NameOf(string stage) => PlaceOf(stage) is >= 0 and int place ? Order[place].Name : Spaced(stage);

    /// <summary>A loss's name.</summary>
    public static string LossOf(string what) => Words.Spoken(what);

    /// <summary>
    /// The stage a caution speaks of: <c>boil 60 min</c> is the boil, <c>knock-out</c> is <c>knockOut</c>. One that speaks
    /// of no stage is pinned to the first, where it is read before anything is hot.
    /// </summary>
    public static string StageOfCaution(string where) => where.Split(' ')[0] switch
    {
        "copper-up" or "kettle" => "copperUp",
        "sparge" => "rinse",
        "mashReading" => "mash",
        "knock-out" => "knockOut",
        "pitch" => "ferment",
        string word => PlaceOf(word) >= 0 ? word : Order[0].Stage,
    };

    private static string Spaced(string name) =>
        string.Concat(name.Select(c => char.IsUpper(c) ? " " + char.ToLowerInvariant(c) : c.ToString()));
}
