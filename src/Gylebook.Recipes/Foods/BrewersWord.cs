namespace Gylebook.Recipes.Foods;

/// <summary>Puts what the brewer measured of a food in the place of what its family usually does.</summary>
internal static class BrewersWord
{
    private const string Source = "stated in the food sheet";

    /// <summary>The makeup with the brewer's own insoluble share and hold, where there are any.</summary>
    public static FoodMakeup Apply(FoodMakeup makeup, FoodAssume assume, MakeupNotes notes)
    {
        if (assume.InsolubleShare is { } share)
        {
            makeup = WithInsoluble(makeup, share.Value.Ratio, notes);
        }
        if (assume.HeldLitresPerKg is { } litres)
        {
            makeup = WithHold(makeup, litres, notes);
        }
        return makeup;
    }

    /// <summary>What else may dissolve or settle (dextrin, protein, minerals) gives or takes, each in proportion.</summary>
    private static FoodMakeup WithInsoluble(FoodMakeup makeup, double share, MakeupNotes notes)
    {
        var soluble = makeup.Dextrin + makeup.SolubleProtein + makeup.Minerals;
        var most = makeup.Insoluble + soluble;
        if (share > most)
        {
            notes.Find("food.insolubleShare", Severity.Warning, "assume.insolubleShare",
                "More insolubles than the food has protein, fibre, ash and other carbohydrate; taken as all of these.",
                MakeupNotes.Say(share), MakeupNotes.Say(most));
            share = most;
        }
        notes.Assume("insolubleShare", MakeupNotes.Say(share), Source);
        var keep = soluble > 0 ? (most - share) / soluble : 0;
        return makeup with
        {
            Insoluble = share,
            Dextrin = soluble > 0 ? makeup.Dextrin * keep : most - share,
            SolubleProtein = makeup.SolubleProtein * keep,
            Minerals = makeup.Minerals * keep,
        };
    }

    /// <summary>Litres per kilogram of food to kilograms per kilogram of insolubles, a litre of beer taken as a kilogram.</summary>
    private static FoodMakeup WithHold(FoodMakeup makeup, double litres, MakeupNotes notes)
    {
        if (litres < 0 || makeup.InsolubleUnmashed <= 0)
        {
            notes.Find("food.heldLitresPerKg", Severity.Warning, "assume.heldLitresPerKg",
                "Cannot be used: it is below zero, or the food has no insolubles to hold anything.", MakeupNotes.Say(litres));
            return makeup;
        }
        notes.Assume("heldLitresPerKg", $"{MakeupNotes.Say(litres)} L/kg", Source);
        var settled = litres / makeup.InsolubleUnmashed;
        return makeup with
        {
            SettledHold = settled,
            SettledHoldLow = settled,
            SettledHoldHigh = settled,
            BagHold = makeup.Insoluble > 0 ? litres / makeup.Insoluble : 0,
        };
    }
}
