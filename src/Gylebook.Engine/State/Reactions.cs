using Gylebook.Science.Fermenting;

namespace Gylebook.Engine.State;

/// <summary>All reactions of a gyle, as data handed to the stages: each row sums to zero.</summary>
/// <param name="Conversion">Starch to glucose, maltose, maltotriose and dextrin, one row each.</param>
/// <param name="Coagulation">Coagulable protein to break.</param>
/// <param name="Fermentation">Balling's reaction, sugar by sugar.</param>
/// <param name="Conditioning">Sugar to gas in the package, by stoichiometry.</param>
/// <param name="Refusal">Sugar a yeast has been offered and does not take.</param>
/// <param name="Souring">Sugar to lactic acid alone, in the order in which it is taken.</param>
/// <param name="MixedSouring">Sugar to lactic acid, ethanol and carbon dioxide, in the same order.</param>
/// <remarks>
/// Fermentation: 1 kg of maltose-equivalent makes 1 : 0.9565 : 0.11 over 2.0665 of ethanol, carbon dioxide and dry yeast
/// [balling1865]. Sugars enter as maltose-equivalent by the water they take up or give off. Conditioning: sugar to
/// ethanol and carbon dioxide by molar mass alone, the larger and so the safer figure. Souring: a hexose makes two of lactic
/// acid (180.156 = 2 × 90.078), or one of lactic acid, one of ethanol and one of carbon dioxide; textbook stoichiometry, without
/// growth, acetic acid or mannitol. Molar masses in g/mol from IUPAC conventional atomic masses.
/// </remarks>
public sealed record Reactions(
    Reaction[] Conversion, Reaction Coagulation, Reaction[] Fermentation, Reaction[] Conditioning, Reaction[] Refusal,
    Reaction[] Souring, Reaction[] MixedSouring)
{
    private const double StarchUnit = 162.141;
    private const double Water = 18.015;
    private const double Hexose = StarchUnit + Water;
    private const double Disaccharide = (2 * StarchUnit) + Water;
    private const double Trisaccharide = (3 * StarchUnit) + Water;

    /// <summary>Mean length of the dextrins a mash leaves, in glucose units: from memory.</summary>
    private const double DextrinLength = 10;
    private const double DextrinChain = (DextrinLength * StarchUnit) + Water;

    private const double EthanolMolar = 46.069;
    private const double CarbonDioxideMolar = (Hexose - (2 * EthanolMolar)) / 2;

    /// <summary>Kilograms of product per kilogram of starch hydrolysed: glucose 1.111, maltose 1.056, maltotriose 1.037, dextrin 1.011.</summary>
    public static double HydrationOf(Component product) => product switch
    {
        Component.Glucose or Component.Fructose => Hexose / StarchUnit,
        Component.Maltose or Component.Sucrose => Disaccharide / (2 * StarchUnit),
        Component.Maltotriose => Trisaccharide / (3 * StarchUnit),
        Component.Dextrin => DextrinChain / (DextrinLength * StarchUnit),
        _ => throw new ArgumentOutOfRangeException(nameof(product), product, "No starch product."),
    };

    /// <summary>The published reactions.</summary>
    public static Reactions Published { get; } = new(
        [Hydrolysis(Component.Glucose), Hydrolysis(Component.Maltose), Hydrolysis(Component.Maltotriose), Hydrolysis(Component.Dextrin)],
        new(Component.CoagulableProtein, [new(Component.CoagulableProtein, -1), new(Component.Break, 1)]),
        [.. Fermentable.Select(Ferment)],
        [.. Fermentable.Select(Condition)],
        [.. Fermentable.Select(Refuse)],
        [.. Sourable.Select(Sour)],
        [.. Sourable.Select(SourMixed)]);

    /// <summary>Sugars a yeast may take, in the order of the fermentation tables.</summary>
    public static IReadOnlyList<Component> Fermentable =>
    [
        Component.Sucrose, Component.Glucose, Component.Fructose, Component.Maltose, Component.Maltotriose, Component.Dextrin,
    ];

    /// <summary>Sugars that lactic bacteria are counted as taking, the first one first: our choice, for pH hangs on the acid alone.</summary>
    public static IReadOnlyList<Component> Sourable =>
        [Component.Glucose, Component.Fructose, Component.Sucrose, Component.Maltose];

    private static Reaction Hydrolysis(Component product)
    {
        double made = HydrationOf(product);
        return new(Component.Starch, [new(Component.Starch, -1), new(product, made), new(Component.Water, 1 - made)]);
    }

    private static Reaction Ferment(Component sugar)
    {
        double maltose = HydrationOf(Component.Maltose) / HydrationOf(sugar);
        return Row(
            sugar,
            new(Component.Water, 1 - maltose),
            new(Component.Ethanol, maltose * Balling.AlcoholYield),
            new(Component.CarbonDioxide, maltose * Balling.CarbonDioxideYield),
            new(Component.Yeast, maltose * Balling.YeastYield));
    }

    private static Reaction Condition(Component sugar)
    {
        double hexose = HydrationOf(Component.Glucose) / HydrationOf(sugar);
        return Row(
            sugar,
            new(Component.Water, 1 - hexose),
            new(Component.Ethanol, hexose * 2 * EthanolMolar / Hexose),
            new(Component.CarbonDioxide, hexose * 2 * CarbonDioxideMolar / Hexose));
    }

    private static Reaction Sour(Component sugar)
    {
        double hexose = HydrationOf(Component.Glucose) / HydrationOf(sugar);
        return Row(sugar, new(Component.Water, 1 - hexose), new(Component.LacticAcid, hexose));
    }

    private static Reaction SourMixed(Component sugar)
    {
        double hexose = HydrationOf(Component.Glucose) / HydrationOf(sugar);
        return Row(
            sugar,
            new(Component.Water, 1 - hexose),
            new(Component.LacticAcid, hexose / 2),
            new(Component.Ethanol, hexose * EthanolMolar / Hexose),
            new(Component.CarbonDioxide, hexose * CarbonDioxideMolar / Hexose));
    }

    /// <summary>One kilogram used up, and what becomes of it; what comes to nothing has no entry.</summary>
    private static Reaction Row(Component used, params ReadOnlySpan<ReactionTerm> made)
    {
        List<ReactionTerm> terms = [new(used, -1)];
        foreach (ReactionTerm term in made)
        {
            if (term.PerKilogram != 0)
            {
                terms.Add(term);
            }
        }

        return new(used, [.. terms]);
    }

    private static Reaction Refuse(Component sugar) =>
        new(sugar, [new(sugar, -1), new(Component.UnusedSugar, 1)]);
}
