using Gylebook.Gyles.Plans;

namespace Gylebook.Gyles.Tests;

/// <summary>A frozen forecast read as text: no engine makes these numbers.</summary>
public sealed class FrozenForecastTests
{
    [Fact]
    public void What_a_sheet_prints_is_read_from_the_text_alone()
    {
        FrozenForecast frozen = Of("""
            { "kit": "Lantern Shed", "allergens": { "statementEu": "Contains: barley.", "statementUs": "Made with barley." },
              "howSure": { "bands": { "stage.mash.gravity": { "low": 1.04, "high": 1.05 } } },
              "cautions": [ { "code": "pressure.glass", "severity": "warning", "where": "package", "message": "Glass bursts." },
                            { "code": "alcohol", "severity": "note", "where": "pour", "message": "For adults." },
                            { "code": "a.sort.nobody.knows.any.more", "severity": "warning", "where": "boil", "message": "Mind it." } ] }
            """);
        Assert.Equal("Lantern Shed", frozen.Kit);
        Assert.Equal(["Contains: barley. (EU)", "Made with barley. (US)"], frozen.Allergens);
        Assert.Equal((1.04, 1.05), frozen.Ends("stage.mash.gravity"));
        Assert.Null(frozen.Ends("stage.boil.gravity"));
        Assert.Equal([(true, true), (false, false), (true, true)], frozen.Cautions.Select(caution => (caution.IsGrave, caution.IsWarning)));
        Assert.Equal([true, true, false], frozen.Cautions.Select(caution => caution.Mark is not null));
    }

    [Fact]
    public void What_it_does_not_say_is_nothing()
    {
        FrozenForecast frozen = Of("{}");
        Assert.Equal(("", 0, 0), (frozen.Kit, frozen.Allergens.Count, frozen.Cautions.Count));
        Assert.Equal(["Contains: milk."], Of("""{ "allergens": { "statementEu": "Contains: milk.", "statementUs": "Contains: milk." } }""").Allergens);
    }

    private static FrozenForecast Of(string forecast) => FrozenForecast.Of(BrewStepsTests.Frozen("plain-bitter", "lantern-shed").Plan! with { Forecast = forecast });
}
