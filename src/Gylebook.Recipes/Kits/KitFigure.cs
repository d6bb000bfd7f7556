using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Kits;

/// <summary>A figure of a kit that finished gyles can teach: where it stands in the file, and the way between its text and its number.</summary>
public abstract class KitFigure
{
    private const int Digits = 3;

    private KitFigure(string path) => Path = path;

    /// <summary>All of them, in the order of the file.</summary>
    public static IReadOnlyList<KitFigure> All { get; } =
    [
        new Row<Evaporation>("kettle.evaporation", k => k.Kettle.Evaporation, (k, v) => k with { Kettle = k.Kettle with { Evaporation = v } }),
        new Row<VolumeAt20C>("kettle.leftBehind", k => k.Kettle.LeftBehind, (k, v) => k with { Kettle = k.Kettle with { LeftBehind = v } }),
        new Row<Fraction>("kettle.solidsLeft", k => k.Kettle.SolidsLeft, (k, v) => k with { Kettle = k.Kettle with { SolidsLeft = v } }),
        new Row<SpecificVolume>("kettle.heldBySpentHops", k => k.Kettle.HeldBySpentHops, (k, v) => k with { Kettle = k.Kettle with { HeldBySpentHops = v } }),
        new Row<VolumeAt20C>("tun.deadSpace", k => k.Tun?.DeadSpace, (k, v) => k with { Tun = k.Tun! with { DeadSpace = v } }),
        new Row<SpecificVolume>("tun.liquorKept", k => k.Tun?.LiquorKept, (k, v) => k with { Tun = k.Tun! with { LiquorKept = v } }),
        new Row<VolumeAt20C>("racking.leftBehind", k => k.RackingLeftBehind, (k, v) => k with { RackingLeftBehind = v }),
        new Row<SpecificVolume>("bag.liquorKept", k => k.Bag?.LiquorKept, (k, v) => k with { Bag = k.Bag! with { LiquorKept = v } }),
        new Row<Fraction>("bag.rinsingShare", k => k.Bag?.RinsingShare, (k, v) => k with { Bag = k.Bag! with { RinsingShare = v } }),
        new Row<Fraction>("conversion", k => k.Conversion, (k, v) => k with { Conversion = v }),
    ];

    /// <summary>The figure at a path of the kit's file; null for none.</summary>
    public static KitFigure? Find(string path) => All.FirstOrDefault(figure => figure.Path == path);

    /// <summary>Where it stands in the kit's file: <c>kettle.evaporation</c>.</summary>
    public string Path { get; }

    /// <summary>The canonical unit of its number: L/h, L, L/kg, or 1 for a share.</summary>
    public abstract string Unit { get; }

    /// <summary>What a kit says of it, as typed; null where the kit has no such part.</summary>
    public abstract string? TextIn(Kit kit);

    /// <summary>The number of a text in the figure's canonical unit: L/h, L, L/kg, or a share of 1; null for what cannot be one.</summary>
    public abstract double? NumberOf(string text);

    /// <summary>A number as text of three digits, in the unit of another text of this figure: <c>4.63 L/h</c>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The figure cannot be that number.</exception>
    public abstract string Written(double number, string like);

    /// <summary>The kit with that text in its place.</summary>
    /// <exception cref="ArgumentException">The kit has no such part, or the text is no such figure: the caller's bug.</exception>
    public abstract Kit In(Kit kit, string text);

    private sealed class Row<T>(string path, Func<Kit, Entered<T>?> of, Func<Kit, Entered<T>, Kit> with) : KitFigure(path)
        where T : struct, IQuantity<T>
    {
        public override string Unit => T.Limits.Unit;

        public override string? TextIn(Kit kit) => of(kit)?.Text;

        public override double? NumberOf(string text) => UnitTable.TryParse(text, out Entered<T> entered, out _) ? entered.Value.Canonical : null;

        public override string Written(double number, string like) => UnitTable.Format(T.FromCanonical(number), UnitOf(like), Digits);

        public override Kit In(Kit kit, string text) =>
            UnitTable.TryParse(text, out Entered<T> entered, out string problem) && of(kit) is not null
                ? with(kit, entered)
                : throw new ArgumentException($"{Path}: {text}; {problem}", nameof(text));

        /// <summary>The sign of the unit that a text ends with, whichever way it is spelled; the most usual one for none.</summary>
        private static string UnitOf(string text) => UnitTable.UnitsOf<T>()
            .SelectMany(unit => unit.Spellings.Append(unit.Symbol).Select(spelling => (unit.Symbol, Spelling: spelling)))
            .Where(unit => text.TrimEnd().EndsWith(unit.Spelling, StringComparison.OrdinalIgnoreCase) && unit.Symbol != "1")
            .OrderByDescending(unit => unit.Spelling.Length)
            .Select(unit => unit.Symbol)
            .FirstOrDefault(UnitTable.UnitsOf<T>()[0].Symbol);
    }
}
