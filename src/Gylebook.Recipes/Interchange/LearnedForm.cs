using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Kits;

namespace Gylebook.Recipes.Interchange;

/// <summary>The history of a kit: figures that its gyles taught and its brewer accepted.</summary>
internal static class LearnedForm
{
    private static readonly string Known = string.Join(", ", KitFigure.All.Select(figure => figure.Path));

    private static readonly ValueForm<KitFigure> Figure = new SpelledForm<KitFigure>(
        "figure.unknown",
        text => (KitFigure.Find(text) is { } figure ? (true, figure) : (false, null!)),
        figure => figure.Path,
        text => ($"\"{text}\" is not one of {Known}; the nearest is \"{NearestWord.To(text, KitFigure.All.Select(figure => figure.Path))}\"", Known),
        ("enum", new ListNode([.. KitFigure.All.Select(figure => new TextNode(figure.Path))])));

    private static readonly Form<AcceptedFigure> Accepted = new Form<AcceptedFigure>(new AcceptedFigure(KitFigure.All[0]) { On = default, From = "", To = "", Low = "", High = "", Gyles = [] })
    { About = "A figure that gyles taught and its brewer accepted." }
        .Need("on", "accepted on", Leaves.Day, a => a.On, (a, v) => a with { On = v })
        .Need("figure", "figure", Figure, a => a.Figure, (a, v) => a with { Figure = v }, new("Where it stands in this file.", "kettle.evaporation"))
        .Need("from", "from", Leaves.Name, a => a.From, (a, v) => a with { From = v }, new("What the kit said before.", "4.0 L/h"))
        .Need("to", "to", Leaves.Name, a => a.To, (a, v) => a with { To = v }, new("What it says since; how sure it is counts for as long as the kit still says so.", "4.6 L/h"))
        .Need("low", "low", Leaves.Name, a => a.Low, (a, v) => a with { Low = v }, new("Nineteen in twenty that the kit's own middle is above it; one gyle may lie further off.", "4.3 L/h"))
        .Need("high", "high", Leaves.Name, a => a.High, (a, v) => a with { High = v }, new("Nineteen in twenty that it is below.", "4.9 L/h"))
        .Need("gyles", "gyles", new ListForm<string>(Leaves.Name) { NeedsOne = true, ItemSaid = "gyle" }, a => a.Gyles, (a, v) => a with { Gyles = v }, new("Names of the readings it was learned from: they do not count twice."))
        .Agree(Check);

    /// <summary>All of it, the earliest first.</summary>
    public static readonly ListForm<AcceptedFigure> History = new(Accepted) { ItemSaid = "learned figure" };

    private static void Check(AcceptedFigure accepted, PartCursor at)
    {
        (string Key, string Text)[] texts = [("from", accepted.From), ("to", accepted.To), ("low", accepted.Low), ("high", accepted.High)];
        foreach ((string key, string text) in texts.Where(text => text.Text.Length > 0 && accepted.Figure.NumberOf(text.Text) is null))
        {
            at.Error("learned.noNumber", key, $"\"{FindingList.Shorten(text)}\"; must be such a figure as {accepted.Figure.Path} is", text, accepted.Figure.Path);
        }

        if (accepted.Figure.NumberOf(accepted.Low) is { } low && accepted.Figure.NumberOf(accepted.To) is { } to && accepted.Figure.NumberOf(accepted.High) is { } high && !(low <= to && to <= high && low < high))
        {
            at.Error("learned.order", "low", $"{accepted.Low}, {accepted.To}, {accepted.High}; low, to and high must stand in that order", accepted.Low, accepted.High);
        }
    }
}
