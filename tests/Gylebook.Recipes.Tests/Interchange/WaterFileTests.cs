using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Recipes.Tests.Interchange;

public sealed class WaterFileTests
{
    [Theory]
    [MemberData(nameof(Samples.Waters), MemberType = typeof(Samples))]
    public void A_sample_reads_without_a_word(string path)
    {
        var reading = WaterFile.Read(Samples.Text(path));
        Assert.Empty(reading.Findings);
        Assert.NotNull(reading.Value);
    }

    /// <summary>Definitions: 1 dH 10 mg/L CaO, 1 fH 10 mg/L CaCO3, CaCO3 100.086 g/mol, Ca 40.078; a Clark degree and a grain of a US gallon print as 14.254 and 17.118 mg/L CaCO3.</summary>
    [Theory]
    [InlineData("100 mg/L", 100, 1e-9)]
    [InlineData("249.73 mg/L CaCO3", 100, 0.002)]
    [InlineData("14 dH", 100.06, 0.01)]
    [InlineData("25 fH", 100.11, 0.01)]
    [InlineData("4.990 mEq/L", 99.995, 0.01)]
    [InlineData("2.495 mmol/L", 99.995, 0.01)]
    [InlineData("17.52 °Clark", 100.00, 0.02)]
    [InlineData("14.589 gpg", 100.00, 0.02)]
    public void Calcium_is_read_in_any_unit_a_laboratory_prints(string printed, double milligrams, double tolerance) =>
        Assert.Equal(milligrams, Report($"\"calcium\": \"{printed}\"").Calcium!.Value.MilligramsPerLitre, tolerance);

    [Fact]
    public void A_millimole_is_two_equivalents_of_hardness_and_one_of_alkalinity()
    {
        WaterReport report = Report("\"hardness\": \"2 mmol/L\", \"alkalinity\": \"2 mmol/L\"");
        Assert.Equal(4, report.Hardness!.Value.MilliequivalentsPerLitre, 1e-12);
        Assert.Equal(2, report.Alkalinity!.Value.MilliequivalentsPerLitre, 1e-12);
    }

    [Theory]
    [InlineData("620 µS/cm", 620)]
    [InlineData("0.62 mS/cm", 620)]
    [InlineData("62 mS/m", 620)]
    public void Conductivity_is_read_in_its_usual_units(string printed, double microsiemens) =>
        Assert.Equal(microsiemens, Report($"\"conductivity\": \"{printed}\"").ConductivityMicrosiemens!.Value, 1e-9);

    [Fact]
    public void A_line_of_its_own_overrules_the_balance()
    {
        const string Plan = """
            { "format": "gylebook-water/1", "name": "x", "sources": [ { "name": "d", "distilled": true } ], "balance": "dry",
              "targets": [ { "ion": "calcium", "amount": "60 mg/L", "weight": 3 } ] }
            """;
        var targets = WaterFile.Read(Plan).Value!.Targets;
        Assert.Contains(new IonTarget(Ion.Calcium, 60, 3), targets);
        Assert.Contains(new IonTarget(Ion.Sulphate, 220), targets);
        Assert.DoesNotContain(targets, target => target.Ion == Ion.Bicarbonate);
    }

    [Fact]
    public void Sources_without_shares_are_refused_when_there_are_two()
    {
        const string Plan = """
            { "format": "gylebook-water/1", "name": "x",
              "sources": [ { "name": "a", "distilled": true }, { "name": "b", "share": "100 %", "distilled": true } ] }
            """;
        var reading = WaterFile.Read(Plan);
        Assert.Null(reading.Value);
        Assert.Equal(["sources.shares"], reading.Findings.Select(finding => finding.Code));
    }

    [Fact]
    public void Every_named_balance_could_be_a_water()
    {
        Assert.NotEmpty(WaterBalances.All);
        Assert.All(WaterBalances.All, balance => Assert.True(ChargeBalance.Of(balance.Ions).IsAccepted, balance.Name));
    }

    [Fact]
    public void A_caramel_malt_between_two_grades_lies_between_their_acidities()
    {
        Malt caramel = Malts.Find("caramel malt").Match!;
        double[] ph = [.. new[] { 20.0, 50, 80, 105, 120, 160, 212, 260, 310, 400 }.Select(ebc =>
            MaltTitrations.Of(caramel, MaltColour.FromEbc(ebc))?.DistilledPh ?? double.NaN).Where(double.IsFinite)];
        Assert.Equal(ph.OrderDescending(), ph);
        Assert.Equal(5.05 + ((4.9 - 5.05) * 15 / 55), MaltTitrations.Of(caramel, MaltColour.FromEbc(120))!.DistilledPh, 1e-12);
        Assert.Equal(4.6, ph[^1], 1e-12);
    }

    /// <summary>Titration of one lot of wheat malt in print: −44.8 d − 6.0 d², d from 6.07: to pH 5.4 it wants 27.3 mEq/kg, printed 27.32.</summary>
    [Fact]
    public void Wheat_malt_is_as_it_was_titrated()
    {
        MaltTitration wheat = MaltTitrations.All["wheat-malt"];
        double d = 5.4 - wheat.DistilledPh;
        Assert.Equal(27.32, -d * (wheat.Buffer + (wheat.Curvature * d)), 0.005);
    }

    [Fact]
    public void A_malt_nobody_measured_has_no_titration() =>
        Assert.Null(MaltTitrations.Of(Malts.Find("raw wheat").Match!, MaltColour.FromEbc(3)));

    private static WaterReport Report(string keys)
    {
        var reading = WaterFile.Read($$"""{ "format": "gylebook-water/1", "name": "x", "sources": [ { "name": "tap", "report": { {{keys}} } } ] }""");
        Assert.Empty(reading.Findings);
        return reading.Value!.Sources[0].Report!;
    }
}
