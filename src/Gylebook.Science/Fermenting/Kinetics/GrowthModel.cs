using Gylebook.Science.Numerics;

namespace Gylebook.Science.Fermenting.Kinetics;

/// <summary>The course of a fermentation by yeast that grows on three sugars, one after the other.</summary>
/// <remarks>
/// <para>μ₁ = V_G·G/(K_G + G); μ₂ = V_M·M/(K_M + M)·K′_G/(K′_G + G); μ₃ = V_N·N/(K_N + N)·K′_G/(K′_G + G)·K′_M/(K′_M + M);
/// G′ = −μ₁X, M′ = −μ₂X, N′ = −μ₃X; X′ = (0.134μ₁ + 0.268μ₂ + 0.402μ₃)·X·K_X/(K_X + (X − X₀)²);
/// E − E₀ = 1.92(G₀ − G) + 3.84(M₀ − M) + 5.76(N₀ − N).</para>
/// <para>Symbols: G, M, N glucose, maltose, maltotriose; X yeast, X₀ as pitched; E ethanol, mol/m³; time in hours; K_X = 3.65·10⁵;
/// V, K, K′: <see cref="UptakeConstants"/>.</para>
/// <para>Source: <c>growth-model</c>: Engasser and others 1981; Gee and Ramirez 1988 and 1994; Ramirez and Maciejowski 2007. Crowding (K_X) came in
/// 1994.</para>
/// <para>Valid for: lager yeast at 8 to 16 °C (range from memory).</para>
/// <para>Accuracy: no curve of the papers was within reach; the tests hold the equations against rows computed elsewhere. Between the two
/// published K_M the ethanol of the fifth day at 12 °C differs by 13 %. Foreign yeasts and pitching rates differ by far more.</para>
/// <para>Notes: there is no lag and no dying in it. Gas: 1.97, 3.94 and 5.91 moles of carbon dioxide a mole of sugar.</para>
/// </remarks>
public static class GrowthModel
{
    /// <summary>Moles of yeast grown on a mole of glucose; twice and three times that on maltose and maltotriose.</summary>
    public const double YeastYield = 0.134;

    /// <summary>Moles of ethanol from a mole of glucose; twice and three times that from maltose and maltotriose.</summary>
    public const double EthanolYield = 1.92;

    /// <summary>Moles of carbon dioxide from a mole of glucose; twice and three times that from maltose and maltotriose.</summary>
    public const double CarbonDioxideYield = 1.97;

    /// <summary>K_X, (mol/m³)²: growth is halved when that much has grown, squared.</summary>
    public const double Crowding = 3.65e5;

    private const int Figures = GrowthRates.Figures;
    private const double Scale = 1e-3;

    /// <summary>The course at one temperature.</summary>
    /// <param name="start">At pitching.</param>
    /// <param name="constants">The uptake at that temperature.</param>
    /// <param name="isCrowded">Whether growth slows as yeast grows, as from 1994 on.</param>
    /// <param name="hours">When, rising, from 0 up.</param>
    /// <param name="course">Written over, one for each hour.</param>
    /// <param name="tolerance">Error allowed in a step, as a share.</param>
    public static void Follow(
        in SugarsAndYeast start, in UptakeConstants constants, bool isCrowded,
        ReadOnlySpan<double> hours, Span<SugarsAndYeast> course, double tolerance = 1e-10) =>
        Follow(start, new GrowthRates(constants, start.Yeast, isCrowded), hours, course, tolerance);

    /// <summary>The course while the temperature changes.</summary>
    /// <param name="start">At pitching.</param>
    /// <param name="temperature">Of the beer.</param>
    /// <param name="isCrowded">Whether growth slows as yeast grows, as from 1994 on.</param>
    /// <param name="hours">When, rising, from 0 up.</param>
    /// <param name="course">Written over, one for each hour.</param>
    /// <param name="tolerance">Error allowed in a step, as a share.</param>
    public static void Follow(
        in SugarsAndYeast start, TemperatureCourse temperature, bool isCrowded,
        ReadOnlySpan<double> hours, Span<SugarsAndYeast> course, double tolerance = 1e-10) =>
        Follow(start, new GrowthRates(temperature, start.Yeast, isCrowded), hours, course, tolerance);

    private static void Follow(
        in SugarsAndYeast start, GrowthRates rates, ReadOnlySpan<double> hours, Span<SugarsAndYeast> course, double tolerance)
    {
        Argument.MustNotBeNegative(start.Glucose, "glucose");
        Argument.MustNotBeNegative(start.Maltose, "maltose");
        Argument.MustNotBeNegative(start.Maltotriose, "maltotriose");
        Argument.MustNotBeNegative(start.Yeast, "yeast");
        Span<double> room = stackalloc double[DormandPrince.RoomFor(Figures)];
        DormandPrince<GrowthRates> along = new(
            rates, 0, [start.Glucose, start.Maltose, start.Maltotriose, start.Yeast], room, tolerance, Scale);
        double before = 0;
        for (int i = 0; i < hours.Length; i++)
        {
            before = Argument.MustBeWithin(hours[i], before, double.MaxValue, nameof(hours));
            if (!along.TryReach(before))
            {
                throw new DidNotConvergeException("course of a fermentation", new Bracket(along.At, before), (double.NaN, double.NaN));
            }

            Span<double> now = along.State;
            double ethanol = start.Ethanol
                + (EthanolYield * (start.Glucose - now[0] + (2 * (start.Maltose - now[1])) + (3 * (start.Maltotriose - now[2]))));
            course[i] = new(now[0], now[1], now[2], now[3], ethanol);
        }
    }
}
