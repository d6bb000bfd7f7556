using Gylebook.Science.Boiling;

namespace Gylebook.Pictures;

/// <summary>What the liquid looks like at a stage.</summary>
/// <param name="Hex">As <c>#RRGGBB</c>.</param>
/// <param name="Is">What it is, and whether the colour was computed.</param>
public readonly record struct Tint(string Hex, TintOf Is)
{
    /// <summary>How deep the glass is that the colour is seen through.</summary>
    public const double GlassCentimetres = 5;

    /// <summary>°P from which wort of unknown colour is drawn in full wort colour: a drawing's choice, no law.</summary>
    private const double FullWortPlato = 20;

    private static readonly (int Red, int Green, int Blue) WaterColour = (0xC8, 0xD5, 0xD6);
    private static readonly (int Red, int Green, int Blue) WortColour = (0xD8, 0xA1, 0x3A);

    /// <summary>The tint of a stage. Colour is computed from knock-out on; before it there is none to compute.</summary>
    /// <param name="srm">Colour; 0 while it is unknown.</param>
    /// <param name="extractPlato">Real extract.</param>
    public static Tint Of(double srm, double extractPlato)
    {
        if (srm > 0)
        {
            return new(WortAppearance.In(srm, GlassCentimetres).Hex, TintOf.Computed);
        }

        if (extractPlato <= 0)
        {
            return new(Hex6(WaterColour, WaterColour, 0), TintOf.Water);
        }

        // Not computed: from the colour water is drawn in to a pale wort's, by how much is dissolved.
        return new(Hex6(WaterColour, WortColour, Math.Min(1, extractPlato / FullWortPlato)), TintOf.Drawn);
    }

    private static string Hex6((int Red, int Green, int Blue) from, (int Red, int Green, int Blue) to, double share) => Invariant($"#{Mix(from.Red, to.Red, share):X2}{Mix(from.Green, to.Green, share):X2}{Mix(from.Blue, to.Blue, share):X2}");

    private static int Mix(int from, int to, double share) => (int)Math.Round(from + ((to - from) * share));
}

/// <summary>Where a tint is from.</summary>
public enum TintOf
{
    /// <summary>Water, in the colour the page draws water in.</summary>
    Water,

    /// <summary>Wort whose colour nobody knows yet: drawn paler or fuller by its extract.</summary>
    Drawn,

    /// <summary>Computed from its colour, as seen in a glass.</summary>
    Computed,
}
