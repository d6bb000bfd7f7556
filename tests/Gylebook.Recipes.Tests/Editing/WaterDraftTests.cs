using Gylebook.Recipes.Editing;
using Gylebook.Science.Water;
using Gylebook.Tests.Shared;

namespace Gylebook.Recipes.Tests.Editing;

/// <summary>A water plan on the desk: what is typed stays, and stands where a person would have written it.</summary>
public sealed class WaterDraftTests
{
    private static readonly WaterDraft Empty = WaterDraft.New("My tap");

    [Fact]
    public void A_new_plan_wants_only_its_litres_to_be_carried_out()
    {
        WaterDraft draft = Empty.Typed("sources[0].report.calcium", "80 mg/L").Typed("strike", "20 L");

        Assert.NotNull(draft.Plan);
        Assert.Equal(80, draft.Plan.Sources[0].Report!.Calcium!.Value.MilligramsPerLitre, 1e-9);
        Assert.Equal(20, draft.Plan.Strike!.Value.Value.Litres, 1e-9);
    }

    [Theory]
    [InlineData("mashPh", "5.4", "5.4")]
    [InlineData("mashPh", "5,4", "5.4")]
    [InlineData("mashPh", "five", "five")]
    [InlineData("sources[0].report.ph", "7.6", "7.6")]
    public void A_number_is_kept_as_one_and_text_that_is_none_is_kept_too(string path, string typed, string kept) =>
        Assert.Equal(kept, Empty.Typed(path, typed)[path]);

    [Fact]
    public void Text_that_is_no_number_is_a_finding_at_its_own_field_and_nothing_is_lost()
    {
        WaterDraft draft = Empty.Typed("mashPh", "about five");

        Assert.Null(draft.Plan);
        Finding finding = Assert.Single(draft.Findings, f => f.Severity == Severity.Error);
        Assert.Equal("mashPh", finding.Where);
        Assert.Equal("about five", WaterDraft.Of(draft.Text)["mashPh"]);
    }

    [Fact]
    public void A_key_typed_later_stands_where_the_guide_has_it()
    {
        WaterDraft draft = Empty.Typed("mashPh", "5.4").Typed("strike", "20 L").Typed("sources[0].share", "100 %");

        Assert.True(draft.Text.IndexOf("sources", StringComparison.Ordinal) < draft.Text.IndexOf("strike", StringComparison.Ordinal));
        Assert.True(draft.Text.IndexOf("strike", StringComparison.Ordinal) < draft.Text.IndexOf("mashPh", StringComparison.Ordinal));
        Assert.True(draft.Text.IndexOf("share", StringComparison.Ordinal) < draft.Text.IndexOf("report", StringComparison.Ordinal));
    }

    [Fact]
    public void The_last_line_of_a_report_can_go_and_the_water_is_still_no_distilled_one()
    {
        WaterDraft draft = Empty.Typed("sources[0].report.calcium", "80 mg/L").Typed("sources[0].report.calcium", "");

        Assert.True(draft.Has("sources[0].report"));
        Assert.Null(draft["sources[0].report.calcium"]);
        Assert.DoesNotContain(draft.Findings, f => f.Code == "source.kind");
    }

    [Fact]
    public void A_plan_keeps_its_name() => Assert.Same(Empty, Empty.Typed("name", " "));

    [Fact]
    public void An_item_goes_behind_the_others_and_its_list_goes_with_the_last_one()
    {
        WaterDraft two = Empty.Added("salts", ("salt", "gypsum"), ("most", "1 g/L")).Added("salts", ("salt", "table salt"));
        Assert.Equal(["gypsum", "table salt"], [two["salts[0].salt"], two["salts[1].salt"]]);

        WaterDraft none = two.RemoveItem("salts", 0).After.RemoveItem("salts", 0).After;
        Assert.Equal(Empty.Text, none.Text);
    }

    [Fact]
    public void A_wish_has_its_weight_as_a_number()
    {
        WaterDraft draft = Empty.Typed("strike", "20 L").Added("targets", ("ion", "calcium"), ("amount", "70 mg/L"), ("weight", "2"));

        Assert.Equal(2, Assert.Single(draft.Plan!.Targets, target => target.Ion == Ion.Calcium).Weight);
    }

    [Fact]
    public void Distilled_water_has_no_report_and_comes_back_with_an_empty_one()
    {
        WaterDraft distilled = Empty.Typed("sources[0].report.calcium", "80 mg/L").Typed("sources[0].boiled", "true").Typed("strike", "20 L").Distil(0, true).After;
        Assert.NotNull(distilled.Plan);
        Assert.Null(distilled.Plan.Sources[0].Report);

        WaterDraft again = distilled.Distil(0, false).After;
        Assert.NotNull(again.Plan);
        Assert.NotNull(again.Plan.Sources[0].Report);
    }

    [Fact]
    public void An_amount_can_move_to_the_other_way_laboratories_print_it()
    {
        WaterDraft draft = Empty.Typed("strike", "20 L").Typed("sources[0].report.sulphate", "10 mg/L").Rename("sources[0].report.sulphate", "sources[0].report.sulphateSulphur")!.After;

        Assert.Null(draft["sources[0].report.sulphate"]);
        Assert.Equal(10, draft.Plan!.Sources[0].Report!.SulphateSulphur!.Value.MilligramsPerLitre, 1e-9);
    }

    [Fact]
    public void Waters_and_shelf_of_another_plan_take_the_place_of_ones_own()
    {
        WaterDraft other = Empty.Typed("sources[0].name", "well").Added("salts", ("salt", "gypsum")).Added("acids", ("acid", "lactic acid 88 %"));
        WaterDraft mine = WaterDraft.New("For a mild").Added("salts", ("salt", "table salt")).Typed("mashPh", "5.4");

        WaterDraft taken = mine.TakeSources(other).After.TakeShelf(other).After;

        Assert.Equal(("For a mild", "well", "gypsum", "lactic acid 88 %", "5.4"),
            (taken.Name, taken["sources[0].name"], taken["salts[0].salt"], taken["acids[0].acid"], taken["mashPh"]));
        Assert.Equal(1, taken.CountOf("salts"));
        Assert.Equal(0, mine.TakeShelf(Empty).After.CountOf("salts"));
    }
}
