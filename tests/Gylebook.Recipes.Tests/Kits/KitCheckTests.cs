using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;

namespace Gylebook.Recipes.Tests.Kits;

public sealed class KitCheckTests
{
    private static readonly string Shed = Samples.Text("samples", "kits", "lantern-shed.json");
    private static readonly string Tun = Samples.Text("samples", "kits", "tun-and-kettle.json");

    [Theory]
    [InlineData("\"usable\": \"31 L\"", "\"usable\": \"35.1 L\"", "vessel.over", "kettle.usable", "35.1 L", "35 L")]
    [InlineData("\"leftBehind\": \"0.8 L\"", "\"leftBehind\": \"32 L\"", "vessel.over", "kettle.leftBehind", "32 L", "31 L")]
    [InlineData("\"usable\": \"26 L\"", "\"usable\": \"31 L\"", "vessel.over", "fermenter.usable", "31 L", "30 L")]
    [InlineData("\"leftBehind\": \"0.1 L\"", "\"leftBehind\": \"27 L\"", "vessel.over", "racking.leftBehind", "27 L", "26 L")]
    [InlineData("\"fill\": \"0.5 L\"", "\"fill\": \"0.53 L\"", "vessel.over", "packages[0].fill", "0.53 L", "0.52 L")]
    [InlineData("\"95 %\"", "\"0 %\"", "kit.conversion", "conversion", "0 %", "above 0 %")]
    [InlineData("\"95 %\"", "\"49 %\"", "kit.conversionLow", "conversion", "49 %", "50 %")]
    [InlineData("\"0.55 L/kg\"", "\"5.5 L/kg\"", "kit.kept", "bag.liquorKept", "5.5 L/kg", "5 L/kg")]
    [InlineData("\"6 L/kg\"", "\"60 L/kg\"", "kit.kept", "kettle.heldBySpentHops", "60 L/kg", "20 L/kg")]
    [InlineData("\"18 °C\"", "\"66 °C\"", "kit.temperature", "grainTemperature", "66 °C", "-30 °C to 60 °C")]
    [InlineData("\"14 °C\"", "\"90 °C\"", "kit.temperature", "chiller.coolant", "90 °C", "-30 °C to 60 °C")]
    [InlineData("\"120 m\"", "\"6001 m\"", "kit.altitude", "altitude", "6001 m", "-450 m to 6000 m")]
    [InlineData("3.5 }", "11 }", "package.maxVolumes", "packages[0].maxVolumes", "11", "10")]
    [InlineData("\"9 bar\"", "\"0 bar\"", "package.maxPressure", "packages[1].maxPressure", "0 bar", "above 0 bar")]
    [InlineData("\"20 min\"", "\"0 min\"", "kit.cleaning.cleaner", "cleaning.cleaner", "0 min", "above 0 min")]
    [InlineData("\"2 min\"", "\"0 min\"", "kit.cleaning.sanitiser", "cleaning.sanitiser", "0 min", "above 0 min")]
    [InlineData("\"Wren\", \"kind\": \"keg\", \"holds\": \"18.9 L\"", "\"Wren\", \"kind\": \"keg\", \"holds\": \"0 L\"", "vessel.empty", "vessels[3].holds", "0 L", "above 0 L")]
    [InlineData("\"0.52 L\", \"fill\": \"0.5 L\"", "\"0 L\"", "vessel.empty", "packages[0].brim", "0 L", "above 0 L")]
    public void What_cannot_be_names_field_value_and_limit(string was, string wrong, string code, string where, string value, string limit)
    {
        var finding = Assert.Single(Check(Shed.Replace(was, wrong, StringComparison.Ordinal)));
        Assert.Equal((code, where, value, limit), (finding.Code, finding.Where, finding.Value, finding.Limit));
        Assert.Contains(value, finding.Message, StringComparison.Ordinal);
    }

    /// <summary>A warning and no error: kits were written before there were words for it, and must still open.</summary>
    [Fact]
    public void A_chiller_of_no_known_kind_is_told_with_the_known_ones()
    {
        var finding = Assert.Single(Check(Shed.Replace("\"immersion\"", "\"imersion\"", StringComparison.Ordinal)));
        Assert.Equal(("chiller.kind", Severity.Warning, "imersion", "immersion, counterflow, plate, none"), (finding.Code, finding.Severity, finding.Value, finding.Limit));
        Assert.Contains("did you mean immersion?", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("immersion", ChillerKind.Immersion)]
    [InlineData("counterflow", ChillerKind.Counterflow)]
    [InlineData("plate", ChillerKind.Plate)]
    [InlineData("none", ChillerKind.None)]
    public void Known_kinds_of_chiller_are_no_finding(string word, ChillerKind kind)
    {
        var text = Shed.Replace("\"immersion\"", $"\"{word}\"", StringComparison.Ordinal);
        Assert.Empty(Check(text));
        Assert.Equal(kind, KitFile.Read(text).Value!.Chiller!.Means);
    }

    [Theory]
    [InlineData("mashCooling")]
    [InlineData("wortCooling")]
    public void Nothing_cools_at_once(string key)
    {
        var finding = Assert.Single(Check(Shed.Replace("\"conversion\"", $"\"{key}\": \"0 h\", \"conversion\"", StringComparison.Ordinal)));
        Assert.Equal(($"kit.{key}", key, "0 h", "above 0 h"), (finding.Code, finding.Where, finding.Value, finding.Limit));
    }

    [Fact]
    public void A_tun_with_more_dead_space_than_room_is_told() =>
        Assert.Equal("tun.deadSpace", Assert.Single(Check(Tun.Replace("\"1.5 L\"", "\"51 L\"", StringComparison.Ordinal))).Where);

    [Fact]
    public void Two_vessels_of_one_name_are_told_whatever_their_case()
    {
        Finding finding = Assert.Single(Check(Shed.Replace("\"Right\"", "\"left\"", StringComparison.Ordinal)));
        Assert.Equal(("vessel.twice", "vessels[1].name", "left"), (finding.Code, finding.Where, finding.Value));
    }

    [Fact]
    public void A_kit_without_a_package_is_told() =>
        Assert.Equal("package.none", Assert.Single(KitCheck.Findings(KitFile.Read(Shed).Value! with { Packages = [] })).Code);

    [Fact]
    public void A_kettle_that_boils_dry_within_the_hour_is_told() =>
        Assert.Contains(Check(Shed.Replace("4.0 L/h", "32 L/h", StringComparison.Ordinal)), finding => finding.Code == "kettle.evaporation");

    /// <summary>Latent heat of water at 100 °C: 2256.5 kJ/kg (IAPWS-IF97 steam tables); 4 L at 0.9982 kg/L in an hour take 2.5027 kW.</summary>
    [Theory]
    [InlineData("2.51 kW", 0)]
    [InlineData("2.49 kW", 1)]
    public void A_flame_must_bring_the_heat_that_the_steam_carries_off(string power, int findings) =>
        Assert.Equal(findings, Check(Shed.Replace("3.5 kW", power, StringComparison.Ordinal)).Count(finding => finding.Code == "kettle.power"));

    private static IReadOnlyList<Finding> Check(string text)
    {
        var reading = KitFile.Read(text);
        Assert.Empty(reading.Findings);
        return KitCheck.Findings(reading.Value!);
    }
}
