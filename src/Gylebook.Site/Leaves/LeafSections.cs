using Gylebook.Gyles.BrewDay;
using Gylebook.Gyles.Days;
using Gylebook.Pictures;
using Gylebook.Pictures.Drawing;
using Gylebook.Pictures.Sheets;
using Gylebook.Site.Publications;

namespace Gylebook.Site.Leaves;

/// <summary>The parts of a published page, each written on its own.</summary>
/// <param name="pen">What writes.</param>
/// <param name="leaf">What is told.</param>
internal sealed class LeafSections(MarkupPen pen, Leaf leaf)
{
    private readonly Publication _published = leaf.Published;

    public void Mast()
    {
        pen.Start("header", ("class", "mast"));
        pen.Words("b", _published.By);
        pen.Start("nav", ("class", "noprint"), ("aria-label", "Other recipes"));
        pen.Words("a", "All recipes", ("href", "../"));
        pen.End("nav");
        pen.End("header");
        pen.Words("h1", _published.Name);
        string version = _published.Version > 0 ? Invariant($"Version {_published.Version}, given out {LeafHtml.Told(_published.Day)}") : $"Given out {LeafHtml.Told(_published.Day)}";
        pen.Words("p", _published.Brewed is { } brewed ? $"{version}; brewed {LeafHtml.Told(brewed)}" : version, ("class", "by"));
    }

    public void Words()
    {
        if (leaf.Inputs.Recipe.Story is { } story)
        {
            pen.Start("div", ("class", "story"));
            pen.Raw(Story.Html(story));
            pen.End("div");
        }
    }

    public void Errata()
    {
        if (_published.Errata.Count == 0)
        {
            return;
        }

        pen.Start("section", ("class", "errata"));
        pen.Words("h2", "Put right since");
        pen.Start("ul");
        foreach (Erratum erratum in _published.Errata)
        {
            pen.Start("li");
            pen.Words("b", erratum.Version > 0 ? Invariant($"{LeafHtml.Told(erratum.Day)}, of version {erratum.Version}: ") : $"{LeafHtml.Told(erratum.Day)}: ");
            pen.Words("span", erratum.Text);
            pen.End("li");
        }

        pen.End("ul");
        pen.End("section");
    }

    public void Glance()
    {
        pen.Start("dl", ("class", "figures"));
        foreach ((SheetFigure metric, SheetFigure other) in leaf.Metric.Figures.Zip(leaf.Other.Figures))
        {
            pen.Start("div");
            pen.Words("dt", metric.Title);
            pen.Start("dd");
            if (metric.Title == "Beer")
            {
                Glass();
            }

            pen.Words("span", metric.Value, ("class", "big"));
            pen.Words("span", other.Value == metric.Value ? metric.Ends : other.Value, ("class", "band"));
            pen.End("dd");
            pen.End("div");
        }

        pen.Start("div");
        pen.Words("dt", "Takes at least");
        pen.Start("dd");
        pen.Words("span", leaf.BrewMinutes > 0 ? Invariant($"{Math.Ceiling(leaf.BrewMinutes / 60):0} h") : "a day", ("class", "big"));
        pen.Words("span", leaf.CellarDays is { } days ? Invariant($"and {days:0} days") : "", ("class", "band"));
        pen.End("dd");
        pen.End("div");
        pen.End("dl");
    }

    private void Glass()
    {
        if (leaf.Forecast.Appearance is { } look)
        {
            pen.Start("svg", ("class", "pour"), ("viewBox", "0 0 46 58"), ("role", "img"), ("aria-label", "Its colour in the glass"));
            pen.Element("path", ("d", "M3 12H43L38.5 55H7.5Z"), ("fill", look.Hex));
            pen.Element("path", ("d", "M1.6 2.5H44.4L39.4 56.5H6.6Z"), ("fill", "none"), ("stroke", "currentColor"), ("stroke-width", 1.4));
            pen.End("svg");
        }
    }

    public void Allergens()
    {
        foreach (string sentence in leaf.Metric.Allergens)
        {
            pen.Words("p", sentence, ("class", "note"));
        }

        pen.Words("p", "The packets you buy have the last word on allergens.", ("class", "small"));
    }

    public void Goods()
    {
        pen.Start("section");
        pen.Words("h2", "What goes in");
        pen.Start("table", ("class", "goods"));
        pen.Start("thead");
        pen.Start("tr");
        pen.Words("th", "What", ("scope", "col"));
        pen.Words("th", "metric", ("scope", "col"), ("class", "n"));
        pen.Words("th", "US", ("scope", "col"), ("class", "n"));
        pen.End("tr");
        pen.End("thead");
        foreach ((SheetPart metric, SheetPart other) in leaf.Parts.Where(part => part.Metric.Rows.Count > 0 || part.Metric.Aside.Length > 0))
        {
            Part(metric, other);
        }

        pen.End("table");
        pen.End("section");
    }

    private void Part(SheetPart metric, SheetPart us)
    {
        pen.Start("tbody");
        pen.Start("tr", ("class", "at"));
        pen.Start("th", ("colspan", "3"), ("scope", "rowgroup"));
        pen.Words("b", metric.Name);
        pen.Words("span", $" {ToldText.Both(metric.Aside)}");
        pen.End("th");
        pen.End("tr");
        foreach ((SheetRow row, SheetRow theirs) in metric.Rows.Zip(us.Rows))
        {
            pen.Start("tr");
            pen.Start("th", ("scope", "row"));
            pen.Words("span", row.What);
            string other = string.Join(", ", theirs.What.Split(", ").Except(row.What.Split(", ")));
            string aside = string.Join(" · ", new[] { other, ToldText.Both(row.When), row.Brings }.Where(word => word.Length > 0));
            if (aside.Length > 0)
            {
                pen.Words("small", aside);
            }

            pen.End("th");
            pen.Words("td", row.Amount, ("class", "n fig"));
            pen.Words("td", theirs.Amount, ("class", "n us"));
            pen.End("tr");
        }

        pen.End("tbody");
    }

    public void Steps()
    {
        pen.Start("section");
        pen.Words("h2", "How");
        pen.Start("ol", ("class", "steps"));
        foreach (BrewStep step in leaf.Steps)
        {
            Step($"step-{step.Key}", step.Title, step.Say, step.Items.Select(item => $"{item.Amount} {item.What}"), step.Cautions.Select(caution => caution.Message));
        }

        foreach (GyleDay day in leaf.Later)
        {
            Step($"step-{day.Key}", Invariant($"Day {day.AfterPitch:0.##}"), day.Sentence, [], day.Cautions);
        }

        pen.End("ol");
        pen.End("section");
    }

    private void Step(string id, string title, string say, IEnumerable<string> items, IEnumerable<string> cautions)
    {
        pen.Start("li", ("id", id));
        pen.Start("div");
        pen.Start("p");
        pen.Words("b", $"{ToldText.Both(title)}. ");
        pen.Words("span", ToldText.Both(say));
        string all = string.Join(", ", items);
        if (all.Length > 0)
        {
            pen.Words("span", $" {ToldText.Both(all)}.", ("class", "items"));
        }

        pen.End("p");
        foreach (string caution in cautions)
        {
            pen.Words("p", ToldText.Both(caution), ("class", "care"));
        }

        pen.End("div");
        pen.End("li");
    }

    public void Run()
    {
        if (leaf.Metric.Run is not { } run)
        {
            return;
        }

        pen.Start("section");
        pen.Words("h2", "From water to glass");
        pen.Raw(RunSvg.Narrow(run));
        pen.Words("p", "Width is litres; gold is sugar, brown is alcohol; soft edges are how sure we are.", ("class", "small"));
        pen.End("section");
    }

    public void HowSure()
    {
        string[] bands = [.. leaf.Metric.Figures.Where(figure => figure.Ends.Length > 0).Select(figure => $"{figure.Title.ToLowerInvariant()} {figure.Ends}")];
        if (bands.Length > 0)
        {
            pen.Start("section");
            pen.Words("h2", "How sure");
            pen.Words("p", ToldText.Both($"Of ten brews by this plan on this kit, nine should land within: {string.Join("; ", bands)}."));
            pen.End("section");
        }
    }

    public void Measured()
    {
        if (_published.Measured.Count == 0)
        {
            return;
        }

        pen.Start("section", ("class", "keep"));
        pen.Words("h2", "How it came out");
        pen.Start("table");
        pen.Start("thead");
        pen.Start("tr");
        pen.Words("th", "What", ("scope", "col"));
        pen.Words("th", "planned", ("scope", "col"), ("class", "n"));
        pen.Words("th", "measured", ("scope", "col"), ("class", "n"));
        pen.End("tr");
        pen.End("thead");
        foreach (MeasuredNumber number in _published.Measured)
        {
            pen.Start("tr");
            pen.Words("th", number.Title, ("scope", "row"));
            pen.Words("td", number is { Low: { } low, High: { } high } ? $"{MeasuredText.Of(number, low)} to {MeasuredText.Of(number, high)}" : "–", ("class", "n us"));
            pen.Words("td", MeasuredText.Of(number, number.Measured) + (number.IsInside == false ? ", outside" : ""), ("class", "n"));
            pen.End("tr");
        }

        pen.End("table");
        pen.End("section");
    }
}
