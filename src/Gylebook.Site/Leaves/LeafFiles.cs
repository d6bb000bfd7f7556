namespace Gylebook.Site.Leaves;

/// <summary>What lies beside a published page, by name.</summary>
internal static class LeafFiles
{
    /// <summary>The page itself.</summary>
    public const string Page = "index.html";

    /// <summary>The run, a picture of its own.</summary>
    public const string Run = "run.svg";

    /// <summary>What the page fetches to weigh the recipe anew.</summary>
    public const string Publication = "publication.json";

    /// <summary>The recipe's own file.</summary>
    public const string Recipe = "recipe.json";

    /// <summary>The kit it was weighed for.</summary>
    public const string Kit = "kit.json";

    /// <summary>The recipe by the standard BeerJSON 1.0.</summary>
    public const string BeerJson = "recipe.beerjson.json";

    /// <summary>The recipe by the standard BeerXML 1.0.</summary>
    public const string BeerXml = "recipe.xml";

    /// <summary>Plain text to paste, long.</summary>
    public const string Text = "recipe.txt";

    /// <summary>Plain text to paste, short.</summary>
    public const string Short = "recipe-short.txt";

    /// <summary>Beside all pages, their icon.</summary>
    public const string Icon = "gylebook.svg";

    /// <summary>Beside all pages, how they look.</summary>
    public const string Style = "leaf.css";

    /// <summary>Beside all pages, what weighs anew.</summary>
    public const string Script = "leaf.js";
}
