using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;

namespace Gylebook.Recipes.Tests.Interchange;

public sealed class KitFileTests
{
    [Theory]
    [MemberData(nameof(Samples.Kits), MemberType = typeof(Samples))]
    public void A_sample_reads_and_writing_it_again_changes_nothing(string path)
    {
        var kit = KitFile.Read(Samples.Text(path)).Value!;
        var written = KitFile.Write(kit);
        Assert.Equal(kit with { Packages = [], Vessels = [] }, KitFile.Read(written).Value! with { Packages = [], Vessels = [] });
        Assert.Equal(kit.Packages, KitFile.Read(written).Value!.Packages);
        Assert.Equal(kit.Vessels, KitFile.Read(written).Value!.Vessels);
        Assert.Equal(written, KitFile.Write(KitFile.Read(written).Value!));
    }

    [Theory]
    [MemberData(nameof(Samples.Kits), MemberType = typeof(Samples))]
    public void A_sample_has_nothing_doubtful_in_it(string path) =>
        Assert.Empty(KitCheck.Findings(KitFile.Read(Samples.Text(path)).Value!));

    [Theory]
    [InlineData("lantern-shed.json")]
    [InlineData("tun-and-kettle.json")]
    [InlineData("coil-and-element.json")]
    [InlineData("long-hose.json")]
    public void A_kit_that_says_everything_is_laid_out_as_we_write(string name)
    {
        var reading = KitFile.Read(Samples.Text("samples", "kits", name));
        Assert.Empty(reading.Findings);
        Assert.Equal(Samples.Text("samples", "kits", name), KitFile.Write(reading.Value!));
    }

    [Fact]
    public void What_is_left_out_is_taken_from_the_starting_values_and_said()
    {
        var reading = KitFile.Read(Samples.Text("samples", "kits", "big-pot.json"));
        Assert.Equal(
            ["kettle.solidsLeft", "kettle.heldBySpentHops", "racking.leftBehind"], reading.Findings.Select(finding => finding.Where));
        Assert.All(reading.Findings, finding => Assert.Equal(Severity.Note, finding.Severity));
        Assert.Equal(0, reading.Value!.Kettle.SolidsLeft.Value.Ratio);
        Assert.Equal(6, reading.Value.Kettle.HeldBySpentHops.Value.LitresPerKilogram);
        Assert.Equal(0.1, reading.Value.RackingLeftBehind.Value.Litres);
        Assert.Null(reading.Value.Tun);
        Assert.Null(reading.Value.Chiller);
    }

    [Fact]
    public void Every_line_of_a_kit_is_read()
    {
        var kit = KitFile.Read(Samples.Text("samples", "kits", "tun-and-kettle.json")).Value!;
        Assert.Equal((70, 62, 6, 2), (kit.Kettle.Brim.Value.Litres, kit.Kettle.Usable.Value.Litres, kit.Kettle.Evaporation.Value.LitresPerHour, kit.Kettle.LeftBehind.Value.Litres));
        Assert.Equal((50, 1.5, 12, 1), (kit.Tun!.Brim.Value.Litres, kit.Tun.DeadSpace.Value.Litres, kit.Tun.HeatCapacity.Value.KilojoulesPerKelvin, kit.Tun.LiquorKept.Value.LitresPerKilogram));
        Assert.Equal(3.2, kit.Packages[1].MaxVolumes!.Value.Value.Volumes, 1e-12);
        Assert.Equal(9, kit.Packages[0].MaxPressure!.Value.Value.Bar);
        Assert.Equal("± 5 g", kit.Instruments!.Scale);
        Assert.Equal(350, kit.Altitude!.Value.Value.Metres);
    }

    [Fact]
    public void All_a_kit_may_say_of_its_cooling_is_read_and_written()
    {
        const string Cooling = "\"chiller\": { \"kind\": \"plate\", \"coolant\": \"11 °C\", \"litresPerMinute\": 7.5, \"kilowattsPerKelvin\": 0.62, \"wortLitresPerMinute\": 2.5 },\n  \"wortCooling\": \"14 h\"";
        var text = Samples.Text("samples", "kits", "lantern-shed.json")
            .Replace("\"chiller\": { \"kind\": \"immersion\", \"coolant\": \"14 °C\" }", Cooling, StringComparison.Ordinal);
        var kit = KitFile.Read(text).Value!;
        Assert.Equal((7.5, 0.62, 2.5), (kit.Chiller!.LitresPerMinute, kit.Chiller.KilowattsPerKelvin, kit.Chiller.WortLitresPerMinute));
        Assert.Equal(14, kit.WortCooling!.Value.Value.Hours);
        var again = KitFile.Read(KitFile.Write(kit)).Value!;
        Assert.Equal((kit.Chiller, kit.WortCooling), (again.Chiller, again.WortCooling));
    }

    [Theory]
    [InlineData("3.5 }", "1e999 }", "number.range")]
    [InlineData("3.5 }", "-1 }", "number.range")]
    [InlineData("\"± 0.001\"", "\"± much\"", "instrument.wrong")]
    [InlineData("true", "1", "json.kind")]
    public void A_wrong_figure_is_told(string was, string wrong, string code)
    {
        var text = Samples.Text("samples", "kits", "lantern-shed.json").Replace(was, wrong, StringComparison.Ordinal);
        Assert.Equal(code, Assert.Single(KitFile.Read(text).Findings).Code);
    }

    [Theory]
    [InlineData("3.50 }", "3.50 }")]
    [InlineData("4 }", "4 }")]
    public void The_digits_of_a_bare_number_are_kept(string typed, string written)
    {
        var text = Samples.Text("samples", "kits", "lantern-shed.json").Replace("3.5 }", typed, StringComparison.Ordinal);
        Assert.Contains($"\"maxVolumes\": {written}", KitFile.Write(KitFile.Read(text).Value!), StringComparison.Ordinal);
    }
}
