using Gylebook.Science.Quantities;

namespace Gylebook.Science.Tests.Quantities.Units;

/// <summary>Every straight-line row of the table against an independent unit library, or a cited exception.</summary>
public sealed class UnitRowsTests
{
    private static readonly double[] Numbers = [0, 1, 12.5, 66, 999.75];

    // Scales of the trade that no unit library knows: a number, what it is in base units, the printed digits, the source.
    private static readonly Dictionary<(string Kind, string Symbol), (double Number, double InBase, double Tolerance, string Source)> Exceptions = new()
    {
        [("a gravity", "°P")] = (12, 12, 0, "the base scale"),
        [("a gravity", "Brix")] = (12, 12, 0, "both are g sucrose in 100 g, by definition"),
        [("a real extract", "°P")] = (5, 5, 0, "the base scale"),
        [("a real extract", "Brix")] = (5, 5, 0, "both are g in 100 g, by definition"),
        [("a beer colour", "SRM")] = (10, 10, 0, "the base scale"),
        [("a beer colour", "EBC")] = (1.97, 1, 0.0008, "ASBC and EBC beer colour methods: EBC = 1.97 SRM, printed to 0.005, so 1 SRM within 0.0026; 25/12.7 is 1.9685"),
        [("a beer colour", "Lovibond")] = (10, 12.79, 0.005, "SRM = 1.3546 L - 0.76: 10 gives 12.79, printed to 0.01; from memory, common practice"),
        [("a malt colour", "EBC")] = (10, 10, 0, "the base scale"),
        [("a malt colour", "Lovibond")] = (60, 157.8, 0.05, "EBC = 2.65 L - 1.2: 60 gives 157.8, printed to 0.1; common practice, no source"),
        [("an alcohol content", "% ABV")] = (5, 5, 0, "the base scale"),
        [("a carbonation", "volumes")] = (1, 44.0095 / 22.414, 0.00005, "IUPAC molar mass and ideal molar volume, rounded to 1.9635"),
        [("a hardness or alkalinity", "mg/L CaCO3")] = (100.086, 2, 0.0005, "CaCO3 100.086 g/mol, two equivalents; IUPAC atomic weights"),
        [("a hardness or alkalinity", "°Clark")] = (1, 0.28484, 0.00001, "one grain CaCO3 in an imperial gallon: 14.254 mg/L, printed to 0.001"),
        [("a hardness or alkalinity", "gr/US gal")] = (1, 0.34207, 0.00001, "one grain CaCO3 in a US gallon: 17.118 mg/L, printed to 0.001"),
        [("a hardness or alkalinity", "dH")] = (1, 0.35665, 0.000005, "10 mg/L CaO, German water practice: 0.35665 mEq/L, printed to 0.00001"),
        [("a hardness or alkalinity", "fH")] = (1, 0.2, 0.0005, "10 mg/L CaCO3, 0.2 mEq/L, printed to 0.1; exact value 0.19983"),
        [("a hardness or alkalinity", "mEq/L")] = (2, 2, 0, "the base scale"),
        [("a concentration", "ppm")] = (50, 50, 0, "a convention: 1 mg/L in water"),
        [("a bitterness", "IBU")] = (30, 30, 0, "the base scale"),
    };

    public static TheoryData<string, string> StraightRows()
    {
        TheoryData<string, string> rows = [];
        foreach (QuantityKind kind in UnitTable.Kinds)
        {
            foreach (Unit unit in kind.Units.Where(unit => unit.Scale is LinearScale))
            {
                rows.Add(kind.Noun, unit.Symbol);
            }
        }

        return rows;
    }

    [Theory]
    [MemberData(nameof(StraightRows))]
    public void A_row_agrees_with_an_independent_library_or_a_cited_value(string noun, string symbol)
    {
        Unit unit = UnitTable.Kinds.Single(kind => kind.Noun == noun).Units.Single(unit => unit.Symbol == symbol);
        if (UnitsNetTwins.Rows.TryGetValue((noun, symbol), out Func<double, double>? twin))
        {
            foreach (double number in Numbers)
            {
                Assert.True(unit.Scale.TryToBase(number, out double inBase));
                // Both sides round to 16 digits a few times; 1e-13 leaves them a thousand roundings.
                Assert.Equal(twin(number), inBase, 1e-13 * Math.Max(Math.Abs(twin(number)), 300));
            }

            return;
        }

        Assert.True(Exceptions.ContainsKey((noun, symbol)), $"{symbol} of {noun} has neither a twin nor a cited exception.");
        var (value, expected, tolerance, source) = Exceptions[(noun, symbol)];
        Assert.True(unit.Scale.TryToBase(value, out double ours));
        Assert.True(Math.Abs(ours - expected) <= tolerance, $"{value} {symbol} is {ours}, not {expected} ({source}).");
    }

    [Fact]
    public void No_twin_or_exception_outlives_its_row()
    {
        HashSet<(string, string)> rows = [.. UnitTable.Kinds.SelectMany(kind => kind.Units.Select(unit => (kind.Noun, unit.Symbol)))];
        Assert.DoesNotContain(UnitsNetTwins.Rows.Keys.Concat(Exceptions.Keys), key => !rows.Contains(key));
        Assert.Empty(UnitsNetTwins.Rows.Keys.Intersect(Exceptions.Keys));
    }

    [Fact]
    public void Only_gravity_and_alcohol_by_mass_are_curves()
    {
        // Their own tests hold them to printed tables; another curve would need some too.
        string[] curves = [.. UnitTable.Kinds.SelectMany(kind => kind.Units).Where(unit => unit.Scale is CurvedScale).Select(unit => unit.Symbol)];
        Assert.Equal(["SG", "% ABW"], curves);
    }

    [Fact]
    public void Every_quantity_finds_its_own_unit_in_the_table()
    {
        foreach (QuantityKind kind in UnitTable.Kinds)
        {
            Assert.All(kind.Quantities, limits => Assert.Contains(kind.Units, unit => unit.Symbol == limits.Unit));
        }
    }

    [Fact]
    public void Every_quantity_type_has_a_kind_of_its_own()
    {
        HashSet<string> covered = [.. UnitTable.Kinds.SelectMany(kind => kind.Quantities).Select(limits => limits.Name)];
        string[] types = [.. typeof(UnitTable).Assembly.GetTypes()
            .Where(type => type.IsValueType && type.GetInterfaces().Any(
                face => face.IsGenericType && face.GetGenericTypeDefinition() == typeof(IQuantity<>)))
            .Select(type => type.Name)];
        Assert.NotEmpty(types);
        Assert.Empty(types.Except(covered));
    }
}
