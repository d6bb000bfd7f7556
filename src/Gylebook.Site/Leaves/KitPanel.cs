using Gylebook.Pictures.Drawing;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Site.Recasting;

namespace Gylebook.Site.Leaves;

/// <summary>"Brew it on your kit": the questions, filled in with what the recipe was weighed for. It shows where a script can answer.</summary>
internal static class KitPanel
{
    /// <summary>Kinds of which one may take the place of another, and the list of each.</summary>
    private static readonly (IngredientKind Kind, string List)[] Swappable = [(IngredientKind.Malt, "malts"), (IngredientKind.Hop, "hops"), (IngredientKind.Yeast, "yeasts")];

    public static void Write(MarkupPen pen, Leaf leaf)
    {
        pen.Start("section", ("class", "kit"), ("id", "kit"), ("hidden", ""));
        pen.Words("h2", "Brew it on your kit");
        pen.Words("p", "Not multiplied: worked out again, from your package back to your water. It happens in this page and goes nowhere; the address keeps what you typed, to send on.");
        pen.Start("form", ("class", "ask"), ("action", ""), ("method", "get"));
        Method(pen, leaf.Inputs.Recipe);
        (RecipeDraft recipe, FileDraft<Kit> kit) = (RecipeDraft.Of(leaf.Published.Files.Recipe), FileDraft.Of(KitFile.Form, leaf.Published.Files.Kit));
        foreach (ReaderField field in ReaderField.Of(leaf.Inputs.Recipe, leaf.Inputs.Kit))
        {
            Field(pen, field, (field.IsOfKit ? kit[field.Path] : recipe[field.Path]) ?? field.Usual ?? "");
        }

        Swaps(pen, leaf.Inputs.Recipe);
        pen.Start("p", ("class", "go"));
        pen.Words("button", "Work it out", ("type", "submit"));
        pen.End("p");
        pen.End("form");
        pen.Start("div", ("id", "recast"), ("aria-live", "polite"));
        pen.End("div");
        pen.End("section");
    }

    private static void Method(MarkupPen pen, Recipe recipe)
    {
        if (!ReaderField.AsksMethod(recipe))
        {
            return;
        }

        pen.Start("label");
        pen.Words("span", "You mash in");
        pen.Start("select", ("name", ReaderField.Method));
        bool isTun = recipe.Mash!.Method == MashMethod.Tun;
        Option(pen, ReaderField.MashBag, "a bag in the kettle", !isTun);
        Option(pen, ReaderField.MashTun, "a tun", isTun);
        pen.End("select");
        pen.End("label");
    }

    private static void Field(MarkupPen pen, ReaderField field, string value)
    {
        pen.Start("label", field.With is { } way ? [("data-with", way)] : []);
        pen.Words("span", field.Label);
        pen.Element("input", ("name", field.Key), ("value", value), ("data-was", value), ("inputmode", "text"), ("autocomplete", "off"), ("maxlength", "40"));
        pen.End("label");
    }

    private static void Swaps(MarkupPen pen, Recipe recipe)
    {
        (IngredientLine Item, string List, int Number)[] lines =
        [
            .. from entry in recipe.Ingredients.Index()
               from swappable in Swappable
               where swappable.Kind == entry.Item.Kind
               select (entry.Item, swappable.List, entry.Index),
        ];
        pen.Start("details");
        pen.Words("summary", "Something else in its place");
        for (int swap = 1; swap <= ReaderField.MostSwaps; swap++)
        {
            pen.Start("div", ("class", "swap"));
            pen.Start("label");
            pen.Words("span", "Instead of");
            pen.Start("select", ("name", ReaderField.Without(swap)));
            Option(pen, "", "nothing", true);
            foreach ((IngredientLine line, string list, int number) in lines)
            {
                pen.Words("option", line.As ?? line.Of, ("value", Invariant($"{number}")), ("data-list", list));
            }

            pen.End("select");
            pen.End("label");
            pen.Start("label");
            pen.Words("span", "take");
            pen.Element("input", ("name", ReaderField.Instead(swap)), ("value", ""), ("list", "malts"), ("autocomplete", "off"), ("maxlength", "80"));
            pen.End("label");
            pen.End("div");
        }

        List(pen, "malts", Malts.All.Select(malt => malt.Name));
        List(pen, "hops", HopCultivars.All.Select(hop => hop.Name));
        List(pen, "yeasts", YeastStyles.All.Select(yeast => yeast.Name));
        pen.End("details");
    }

    private static void List(MarkupPen pen, string id, IEnumerable<string> names)
    {
        pen.Start("datalist", ("id", id));
        foreach (string name in names)
        {
            pen.Element("option", ("value", name));
        }

        pen.End("datalist");
    }

    private static void Option(MarkupPen pen, string value, string words, bool isChosen)
    {
        if (isChosen)
        {
            pen.Words("option", words, ("value", value), ("selected", ""));
        }
        else
        {
            pen.Words("option", words, ("value", value));
        }
    }
}
