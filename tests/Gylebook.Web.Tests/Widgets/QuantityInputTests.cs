using AngleSharp.Dom;
using Bunit;
using Gylebook.Pictures;
using Gylebook.Recipes;
using Gylebook.Science.Quantities;
using Gylebook.Web.Widgets;

namespace Gylebook.Web.Tests.Widgets;

/// <summary>The one field in which people type numbers with units.</summary>
public sealed class QuantityInputTests : GylebookTestContext
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(300);

    private readonly List<Entered<Mass>?> _committed = [];

    [Fact]
    public void The_label_finds_its_field()
    {
        IRenderedComponent<QuantityInput<Mass>> field = Malt("4.2 kg");
        IElement label = field.Find("label");
        Assert.Equal("Amount", label.TextContent);
        Assert.Equal(field.Find("input").Id, label.GetAttribute("for"));
        Assert.Equal("decimal", field.Find("input").GetAttribute("inputmode"));
    }

    [Fact]
    public void What_was_typed_is_kept_to_the_letter()
    {
        IRenderedComponent<QuantityInput<Mass>> field = Malt("4.2 kg");
        Commit(field, "4,50 KG");
        Entered<Mass> amount = Assert.Single(_committed)!.Value;
        Assert.Equal("4,50 KG", amount.Text);
        Assert.Equal(4.5, amount.Value.Kilograms, 12);
    }

    [Fact]
    public void A_short_pause_commits_and_the_text_in_the_focused_field_stays()
    {
        IRenderedComponent<QuantityInput<Mass>> field = Malt("4.2 kg");
        field.Find("input").Focus();
        field.Find("input").Input("5");
        Assert.Empty(_committed);
        Clock.Step(Pause / 2);
        Assert.Empty(_committed);
        Clock.Step(Pause);
        field.WaitForAssertion(() => Assert.Equal("5 kg", Assert.Single(_committed)!.Value.Text));
        Assert.Equal("5", field.Find("input").GetAttribute("value"));
        field.Find("input").Blur();
        Assert.Equal("5 kg", field.Find("input").GetAttribute("value"));
    }

    [Fact]
    public void Each_key_starts_the_pause_anew()
    {
        IRenderedComponent<QuantityInput<Mass>> field = Malt("4.2 kg");
        field.Find("input").Focus();
        field.Find("input").Input("5");
        Clock.Step(Pause / 2);
        field.Find("input").Input("5.5");
        Clock.Step(Pause / 2);
        Assert.Empty(_committed);
        Clock.Step(Pause);
        field.WaitForAssertion(() => Assert.Equal("5.5 kg", Assert.Single(_committed)!.Value.Text));
    }

    [Fact]
    public void A_change_from_elsewhere_leaves_the_focused_text_alone()
    {
        IRenderedComponent<QuantityInput<Mass>> field = Malt("4.2 kg");
        field.Find("input").Focus();
        field.Find("input").Input("4.");
        field.Render(parameters => parameters.Add(f => f.Value, Typed("3 kg")));
        Assert.Equal("4.", field.Find("input").GetAttribute("value"));
    }

    [Fact]
    public void A_change_from_elsewhere_is_shown_when_nobody_types()
    {
        IRenderedComponent<QuantityInput<Mass>> field = Malt("4.2 kg");
        field.Render(parameters => parameters.Add(f => f.Value, Typed("3 kg")));
        Assert.Equal("3 kg", field.Find("input").GetAttribute("value"));
    }

    [Theory]
    [InlineData("4.2 kgg")]
    [InlineData("-1 kg")]
    [InlineData("a lot")]
    [InlineData("66 °C")]
    public void What_cannot_be_read_stays_and_says_why_under_the_field(string text)
    {
        IRenderedComponent<QuantityInput<Mass>> field = Malt("4.2 kg");
        Commit(field, text);
        field.Find("input").Blur();
        Assert.Empty(_committed);
        Assert.Equal(text, field.Find("input").GetAttribute("value"));
        Assert.Equal("true", field.Find("input").GetAttribute("aria-invalid"));
        IElement note = field.Find("#" + field.Find("input").GetAttribute("aria-describedby"));
        Assert.Contains(text, note.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void An_emptied_field_is_nothing_where_that_may_be_and_a_finding_where_not()
    {
        IRenderedComponent<QuantityInput<Mass>> must = Malt("4.2 kg");
        Commit(must, "");
        Assert.Empty(_committed);
        Assert.Equal("true", must.Find("input").GetAttribute("aria-invalid"));

        IRenderedComponent<QuantityInput<Mass>> may = Malt("4.2 kg", optional: true);
        Commit(may, " ");
        Assert.Null(Assert.Single(_committed));
    }

    [Fact]
    public void The_same_text_again_commits_nothing()
    {
        IRenderedComponent<QuantityInput<Mass>> field = Malt("4.2 kg");
        Commit(field, "4.2 kg");
        Assert.Empty(_committed);
    }

    [Fact]
    public void A_reader_of_pounds_sees_pounds_and_rewrites_nothing_by_looking()
    {
        IRenderedComponent<QuantityInput<Mass>> field = Malt("4.2 kg", units: ReaderUnits.UnitedStates);

        // 4.2 kg / 0.45359237 kg = 9.259 lb (1959 agreement).
        Assert.Equal("9.259 lb", field.Find("input").GetAttribute("value"));
        field.Find("input").Focus();
        field.Find("input").Blur();
        Assert.Empty(_committed);
        Commit(field, "9");
        Assert.Equal("9 lb", Assert.Single(_committed)!.Value.Text);
    }

    [Fact]
    public void Findings_of_others_are_told_under_the_field()
    {
        Finding doubtful = new("amount.huge", Severity.Warning, "ingredients[0].amount", "40 kg; more than the kettle takes");
        IRenderedComponent<QuantityInput<Mass>> field = RenderMetric<QuantityInput<Mass>>(parameters => parameters
            .Add(f => f.Label, "Amount").Add(f => f.Value, Typed("40 kg")).Add(f => f.Findings, [doubtful]));
        Assert.Contains("more than the kettle takes", field.Find("li.warning").TextContent, StringComparison.Ordinal);
        Assert.False(field.Find("input").HasAttribute("aria-invalid"));
    }

    private static Entered<Mass> Typed(string text) => UnitTable.TryParse(text, out Entered<Mass> mass, out string problem)
        ? mass
        : throw new ArgumentException(problem, nameof(text));

    private static void Commit(IRenderedComponent<QuantityInput<Mass>> field, string text)
    {
        field.Find("input").Focus();
        field.Find("input").Input(text);
        field.Find("input").Change(text);
    }

    private IRenderedComponent<QuantityInput<Mass>> Malt(string text, bool optional = false, ReaderUnits? units = null)
    {
        _committed.Clear();
        return RenderFor<QuantityInput<Mass>>(units ?? ReaderUnits.Metric, parameters => parameters
            .Add(f => f.Label, "Amount")
            .Add(f => f.Value, Typed(text))
            .Add(f => f.IsOptional, optional)
            .Add(f => f.ValueChanged, _committed.Add));
    }
}
