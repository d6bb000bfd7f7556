using Gylebook.Engine.State;
using Gylebook.Recipes;

namespace Gylebook.Forecast.Foods;

/// <summary>How worrying the fat is that stays in the beer.</summary>
public enum FatLight
{
    /// <summary>Below 10 mg/L.</summary>
    Green,

    /// <summary>From 10 to 50 mg/L.</summary>
    Amber,

    /// <summary>Above 50 mg/L.</summary>
    Red,
}

/// <summary>What fat that stays dispersed means for head and shelf life.</summary>
/// <remarks>
/// <para>What: a traffic light on mg/L of added fat in the beer.</para>
/// <para>Source: a heuristic, no source. Wort itself holds 10 to 140 mg/L of lipid by how it was run off (Anness &amp; Reed,
/// J. Inst. Brew. 91:313, 1985); neutral fat harms head in proportion to its dose (Hollemans et al., MBAA Tech. Q. 28:168, 1991).</para>
/// <para>Valid for: fat of foods, a share of which stays (parameter <c>ferment.fatStays</c>).</para>
/// <para>Accuracy: none is claimed; the share that stays has not been measured for foods.</para>
/// </remarks>
/// <param name="Light">The light.</param>
/// <param name="Message">What to expect, and do.</param>
/// <param name="Source">Who says so.</param>
public sealed record FatAdvice(FatLight Light, string Message, string Source)
{
    private const double Amber = 10;
    private const double Red = 50;

    /// <summary>The advice for that much fat in the beer.</summary>
    public static FatAdvice For(double milligramsPerLitre) => milligramsPerLitre switch
    {
        < Amber => new(FatLight.Green, "So little fat stays that head and shelf life should not suffer.", Heuristic),
        <= Red => new(FatLight.Amber, "Enough fat may stay to thin the head. Skim or fine it out, keep oxygen out, and drink it within two or three months.", Heuristic),
        _ => new(FatLight.Red, "So much fat may stay that the head collapses and the beer turns rancid. Use less, a defatted kind, or an extract in spirit with the fat frozen off.", Heuristic),
    };

    /// <summary>The same as a caution, for a food's page and a recipe alike; none while the light is green.</summary>
    public IEnumerable<Caution> Cautions => Light == FatLight.Green
        ? []
        : [new("fat.head", Stage.Pour, Message, Source) { Severity = Light == FatLight.Red ? Severity.Warning : Severity.Note }];

    private const string Heuristic = "heuristic, no source; fat and head: Hollemans et al., MBAA Tech. Q. 28:168 (1991)";
}
