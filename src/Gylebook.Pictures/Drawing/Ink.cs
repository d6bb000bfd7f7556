namespace Gylebook.Pictures.Drawing;

/// <summary>Colours and letters: the page's tokens where there are any, our own light ones where there are none.</summary>
internal static class Ink
{
    public const string Text = "var(--ink, #1d2429)";
    public const string Faint = "var(--faint, #62676a)";
    public const string Rule = "var(--rule, #d8cdb9)";
    public const string Copper = "var(--copper, #a9491f)";
    public const string Amber = "var(--amber, #8a5a00)";
    public const string Water = "var(--water, #c8d5d6)";
    public const string Serif = "var(--serif, Georgia, serif)";
    public const string Sans = "var(--sans, system-ui, sans-serif)";

    /// <summary>The tokens for a file that stands alone, light and dark, on its own paper.</summary>
    public const string Alone =
        "svg{--paper:#fdfaf3;background:var(--paper)}"
        + "@media (prefers-color-scheme:dark){svg{--paper:#1b2022;--ink:#ece5d8;--faint:#a5a79f;--rule:#353d40;"
        + "--copper:#e8915f;--amber:#e6b450;--water:#4a5b5f}}"
        + "@media print{svg{background:none}}";
}
