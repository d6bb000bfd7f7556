using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Recipes.Interchange;

/// <summary>Between what limits the figures of a water plan lie, and the kinds of value that keep to them.</summary>
internal static class WaterLimits
{
    public const double LowestMashPh = 4.5;
    public const double HighestMashPh = 6.5;
    private const double ColdestSample = 15;
    private const double HottestSample = 80;

    /// <summary>No water to brew with has more of any one ion: our choice; the sea has 19 g/L of chloride.</summary>
    public const double MostMilligramsPerLitre = 5000;

    /// <summary>5000 mg/L as CaCO3, as for the ions.</summary>
    public const double MostMilliequivalents = 100;

    /// <summary>An amount of one ion in a liquor.</summary>
    public static ValueForm<Entered<Concentration>> Ion { get; } = new NarrowedForm<Entered<Concentration>>(Leaves.Of<Concentration>(), IsPossible);

    /// <summary>How warm a sample was: mash pH was measured from room temperature to mashing out, and is known nowhere else.</summary>
    public static ValueForm<Entered<Temperature>> Sample { get; } = new NarrowedForm<Entered<Temperature>>(Leaves.Of<Temperature>(), IsMeasurable);

    private static bool IsMeasurable(NodeCursor at, Entered<Temperature> sample)
    {
        if (sample.Value.Celsius is >= ColdestSample and <= HottestSample)
        {
            return true;
        }

        string limit = Invariant($"{ColdestSample} to {HottestSample} °C");
        at.Error("sample.temperature", $"{sample.Text}; must be {limit}", sample.Text, limit);
        return false;
    }

    private static bool IsPossible(NodeCursor at, Entered<Concentration> amount)
    {
        if (amount.Value.MilligramsPerLitre <= MostMilligramsPerLitre)
        {
            return true;
        }

        string limit = Invariant($"{MostMilligramsPerLitre} mg/L");
        at.Error("water.tooMuch", $"{amount.Text}; no liquor has more than {limit} of it: look at the unit", amount.Text, limit);
        return false;
    }
}

/// <summary>Hardness or alkalinity in any unit laboratories print; what a mmol/L counts for depends on which of the two it is.</summary>
internal sealed class HardnessForm : ValueForm<Entered<Equivalents>>
{
    private readonly double _perMillimole;

    private HardnessForm(double perMillimole) => _perMillimole = perMillimole;

    public static HardnessForm Hardness { get; } = new(HardnessUnits.Millimoles);

    public static HardnessForm Alkalinity { get; } = new(1);

    /// <summary>Calcium or magnesium, as itself or as its hardness: "100 mg/L", "250 mg/L CaCO3", "14 dH".</summary>
    public static ValueForm<Entered<Concentration>> OfIon(Ion ion) => new IonForm(ion);

    public override TResult Accept<TResult>(IValueFormVisitor<TResult> visitor) => visitor.Text(isLong: false);

    internal override bool TryRead(NodeCursor at, out Entered<Equivalents> value)
    {
        bool isRead = true;
        if (Millimoles(at) is { } millimoles)
        {
            value = new Entered<Equivalents>(Equivalents.FromMilliequivalentsPerLitre(millimoles * _perMillimole), ((TextNode)at.Node).Text);
        }
        else
        {
            isRead = Leaves.Of<Equivalents>().TryRead(at, out value);
        }

        if (!isRead || value.Value.MilliequivalentsPerLitre is >= 0 and <= WaterLimits.MostMilliequivalents)
        {
            return isRead;
        }

        string limit = Invariant($"0 to {WaterLimits.MostMilliequivalents} mEq/L");
        string text = FindingList.Shorten(value.Text);
        at.Error("water.tooMuch", $"{text}; must be from {limit}: look at the unit", text, limit);
        return false;
    }

    internal override Node Write(Entered<Equivalents> value) => new TextNode(value.Text);

    internal override ObjectNode Schema(SchemaParts parts) => parts.Named("hardness", () => Written(Units));

    private static IReadOnlyList<string> Units => [.. UnitTable.UnitsOf<Equivalents>().SelectMany(u => u.Spellings.Prepend(u.Symbol)), "mmol/L"];

    private static ObjectNode Written(IReadOnlyList<string> units) => Node.Object(
        ("description", new TextNode("Hardness or alkalinity in any unit laboratories print; a mmol/L is 2 mEq of hardness and 1 mEq of alkalinity.")),
        ("type", new TextNode("string")), ("pattern", new TextNode(SchemaParts.Pattern(units))), ("maxLength", new BareNode("64")));

    private static double? Millimoles(NodeCursor at) => at.Node is TextNode { Text: var text } ? NumberBefore.Unit(text, "mmol/L") : null;

    private sealed class IonForm(Ion ion) : ValueForm<Entered<Concentration>>
    {
        public override TResult Accept<TResult>(IValueFormVisitor<TResult> visitor) => visitor.Text(isLong: false);

        internal override bool TryRead(NodeCursor at, out Entered<Concentration> value)
        {
            if (at.Node is not TextNode { Text: var text } || !(UnitTable.LooksLike<Equivalents>(text) || Millimoles(at) is not null))
            {
                return WaterLimits.Ion.TryRead(at, out value);
            }

            bool isRead = Hardness.TryRead(at, out Entered<Equivalents> hardness);
            value = isRead
                ? new Entered<Concentration>(Concentration.FromMilligramsPerLitre(hardness.Value.MilliequivalentsPerLitre * ion.EquivalentWeight()), text)
                : default;
            return isRead;
        }

        internal override Node Write(Entered<Concentration> value) => new TextNode(value.Text);

        internal override ObjectNode Schema(SchemaParts parts) => parts.Named("ionOrHardness", () => SchemaParts.Described(
            Written([.. UnitTable.UnitsOf<Concentration>().SelectMany(u => u.Spellings.Prepend(u.Symbol)), .. Units]), "An ion, as itself or as its hardness."));
    }
}

/// <summary>Figures of a water plan that are written in a way of their own.</summary>
internal static class LiquorSpelled
{
    private const string ConductivityForm = "a number from 0 with µS/cm, mS/cm or mS/m, at 25 °C";
    private const double MostMicrosiemens = 20_000;

    /// <summary>A conductivity.</summary>
    public static ValueForm<PrintedConductivity> Conductivity { get; } = new SpelledForm<PrintedConductivity>(
        "conductivity.wrong",
        text => Microsiemens(text) is >= 0 and <= MostMicrosiemens and var found ? (true, new PrintedConductivity(found, text)) : (false, null!),
        conductivity => conductivity.Text,
        text => ($"{text}; must be {ConductivityForm}", ConductivityForm),
        ("pattern", new TextNode(@"^\s*([0-9]+(\.[0-9]*)?|\.[0-9]+)\s*([µμu]S/cm|mS/cm|mS/m)\s*$")), SchemaParts.Example("450 µS/cm"));

    /// <summary>A density of an acid.</summary>
    public static ValueForm<Density> Density { get; } = new SpelledForm<Density>(
        "acid.density",
        text => ShelfWords.Density(text) is { } density ? (true, new Density(density, text)) : (false, null!),
        density => density.Text,
        text => ($"{text}; must be {ShelfWords.DensityForm}", ShelfWords.DensityForm),
        ("pattern", new TextNode(@"^\s*[0-9]+([.,][0-9]+)?\s*(kg/L|kg/l|g/mL|g/ml|g/cm3|g/cm³)\s*$")), SchemaParts.Example("1.335 kg/L"));

    private static double? Microsiemens(string text) =>
        NumberBefore.Unit(text, "µS/cm") ?? NumberBefore.Unit(text, "μS/cm") ?? NumberBefore.Unit(text, "uS/cm")
        ?? (NumberBefore.Unit(text, "mS/cm") * 1000) ?? (NumberBefore.Unit(text, "mS/m") * 10);
}
