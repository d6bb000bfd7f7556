using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange.OpenFormats;
using Gylebook.Recipes.Interchange.OpenFormats.Model;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.BeerXml;

/// <summary>What BeerXML parts otherwise than the other standard does, both ways.</summary>
internal static class BeerXmlRecipes
{
    /// <summary>SRM is 12.7 and EBC 25 times the same absorbance.</summary>
    private const double EbcInSrm = 25 / 12.7;

    private const double KilojoulesInKilocalorie = 4.184;

    /// <summary>A recipe as the standard has it.</summary>
    public static XmlRecipe Leave(OpenRecipe open, BrewedFigures? figures, TravelList travels)
    {
        WhatStays(open, travels);
        OpenFermentable[] fermentables = [.. open.Fermentables.Where(one => one.Amount?.Weighed?.Mass is not null).Select(one => BeerXmlTimings.Leave(Typed(one), travels))];
        OpenMisc[] poured = [.. open.Fermentables.Where(one => one.Amount?.Weighed?.Mass is null).Select(one => Poured(one, travels))];
        OpenStep[] steps = [.. open.Ferment];
        return new XmlRecipe
        {
            Open = open with
            {
                Type = open.Type is RecipeType.AllGrain or RecipeType.PartialMash ? open.Type : RecipeType.Extract,
                PreBoil = open.PreBoil ?? Batch(open, travels),
                BoilTime = open.BoilTime ?? new(Duration.FromMinutes(0), "0 min"),
                Fermentables = fermentables,
                Hops = [.. open.Hops.Select(hop => BeerXmlTimings.Leave(hop, open, travels))],
                Miscellaneous = [.. open.Miscellaneous.Concat(poured).Select(misc => BeerXmlTimings.Leave(misc with { Type = misc.Type == MiscType.Wood ? MiscType.Other : misc.Type }, open, travels))],
                Cultures = [.. open.Cultures.Select(culture => Leave(culture, travels))],
                Waters = [.. open.Waters.Select(water => water with { Amount = water.Amount ?? new(VolumeAt20C.FromLitres(0), "0 L") })],
                Mash = open.Mash is { } mash ? Leave(mash, figures, travels) : null,
            },
            Stages = Math.Min(steps.Length, 3),
            Primary = steps.ElementAtOrDefault(0),
            Secondary = steps.ElementAtOrDefault(1),
            Tertiary = steps.ElementAtOrDefault(2),
        };
    }

    /// <summary>What a document holds, as both standards have it.</summary>
    public static OpenBook Arrive(XmlBook xml, TravelList travels) => xml.Book with
    {
        Recipes = [.. xml.Recipes.Select(recipe => Arrive(recipe, travels))],
        Fermentables = [.. xml.Book.Fermentables.Select(one => Record(Arrive(one)))],
        Hops = [.. xml.Book.Hops.Select(Record)],
        Cultures = [.. xml.Book.Cultures.Select(Record)],
        Miscellaneous = [.. xml.Book.Miscellaneous.Select(Record)],
        Kits = [.. xml.Equipments.Select(Arrive)],
    };

    private static OpenRecipe Arrive(XmlRecipe xml, TravelList travels)
    {
        OpenStep[] stages = [.. new[] { xml.Primary, xml.Secondary, xml.Tertiary }.OfType<OpenStep>()];
        if (xml.Stages is { } told && told < stages.Length && told >= 1)
        {
            travels.Leave($"{xml.Open.Path}.FERMENTATION_STAGES", Invariant($"{told:0} stages, and days or degrees of {stages.Length}; those beyond are not read"));
            stages = stages[..(int)told];
        }

        OpenRecipe open = xml.Open with
        {
            Ferment = [.. stages.Where(stage => stage.Time is not { Value.Days: 0 }).Select((stage, i) => stage with { Path = $"{xml.Open.Path}.FERMENTATION_STAGES", Name = Invariant($"Rest {i + 1}") })],
            BoilTime = xml.Open.BoilTime is { Value.Minutes: 0 } ? null : xml.Open.BoilTime,
            Fermentables = [.. xml.Open.Fermentables.Select(Arrive)],
            Kit = xml.Equipment is { } equipment ? Arrive(equipment) : null,
            Batch = xml.Open.Batch,
        };
        if (open.Mash is { SpargeTemperature: { } sparge } mash)
        {
            travels.Leave($"{mash.Path}.SPARGE_TEMP", $"{sparge}; the file says no litres to rinse with");
        }

        return open with
        {
            Hops = [.. open.Hops.Select(hop => BeerXmlTimings.Arrive(hop, open, travels))],
            Miscellaneous = [.. open.Miscellaneous.Select(misc => BeerXmlTimings.Arrive(misc, open, travels))],
        };
    }

    /// <summary>A colour in SRM where the standard counts so, and what an adjunct is.</summary>
    private static OpenFermentable Arrive(OpenFermentable one)
    {
        FermentableType? type = one.Type != FermentableType.Adjunct ? one.Type
            : OpenProduct.Read(one.ProductId) is { } ours ? ours.Kind == IngredientKind.Malt ? FermentableType.Grain : FermentableType.Other
            : Malts.Find(one.Name ?? "").Match is not null ? FermentableType.Grain
            : FoodTable.Find(one.Name ?? "").Match is not null ? FermentableType.Other
            : one.WantsMash == true ? FermentableType.Grain : FermentableType.Other;
        Entered<MaltColour>? colour = one.Colour;
        if (one.Type is not (FermentableType.Grain or null) && colour is { } lovibond && UnitTable.TryIn(lovibond.Value, "Lovibond", out double srm) && srm * EbcInSrm >= 0)
        {
            double ebc = Math.Round(srm * EbcInSrm, 4);
            colour = new(MaltColour.FromEbc(ebc), Invariant($"{ebc:0.####} EBC"));
        }

        return one with { Type = type, Colour = colour, Group = one.Type == FermentableType.Adjunct && type == FermentableType.Grain ? GrainGroup.Adjunct : one.Group };
    }

    /// <summary>A record outside a recipe: its amount says nothing.</summary>
    private static T Record<T>(T thing)
        where T : OpenThing => thing with { Amount = null, Timing = null };

    private static OpenKit Arrive(XmlEquipment xml)
    {
        double? off = xml is { BoilSize: { } boil, Evaporation: { } rate } ? boil.Value.Litres * rate.Value.Ratio : null;
        OpenVessel kettle = new()
        {
            Path = xml.Path,
            Name = "kettle",
            Form = VesselForm.Kettle,
            Keeps = xml.KettleKeeps,
            BoiledOff = off is { } litres ? new(VolumeAt20C.FromLitres(litres), Invariant($"{litres:0.####} L")) : null,
        };
        OpenVessel tun = new()
        {
            Path = xml.Path,
            Name = "tun",
            Form = VesselForm.MashTun,
            Holds = xml.TunHolds,
            Keeps = xml.TunKeeps,
            Weight = xml.TunWeight,
            SpecificHeat = xml.TunHeat * KilojoulesInKilocalorie,
        };
        return new OpenKit { Path = xml.Path, Name = xml.Name, Vessels = xml.TunHolds is { Value.Litres: > 0 } ? [kettle, tun] : [kettle] };
    }

    private static OpenFermentable Typed(OpenFermentable one)
    {
        FermentableType? type = one.Type switch
        {
            FermentableType.Grain when one.Group is GrainGroup.Flaked or GrainGroup.Adjunct => FermentableType.Adjunct,
            FermentableType.Honey => FermentableType.Sugar,
            FermentableType.Fruit or FermentableType.Juice or FermentableType.Other => FermentableType.Adjunct,
            _ => one.Type,
        };
        if (type is FermentableType.Grain or null || one.Colour is not { } colour)
        {
            return one with { Type = type };
        }

        // The tag is read and written as degrees Lovibond, and means SRM for all but grain.
        double srm = colour.Value.Ebc / EbcInSrm;
        return one with { Type = type, Colour = UnitTable.TryParse($"{OpenFormats.Tables.OpenUnits.Digits(Math.Round(srm, 9))} Lovibond", out Entered<MaltColour> said, out _) ? said : one.Colour };
    }

    private static OpenMisc Poured(OpenFermentable one, TravelList travels)
    {
        travels.Convert("ingredients", $"{one.Name}: {one.Amount?.Weighed?.Text} stand beside the spices in this file, which weighs all fermentables; its extract stays behind");
        return new OpenMisc { Name = one.Name, ProductId = one.ProductId, Amount = one.Amount, Timing = one.Timing, Type = MiscType.Other };
    }

    private static OpenCulture Leave(OpenCulture culture, TravelList travels)
    {
        CultureType type = culture.Type is CultureType.Lager or CultureType.Wheat ? culture.Type.Value : CultureType.Ale;
        bool isLate = culture.Timing?.Use is OpenUse.Rack or OpenUse.Package;
        if (culture.Timing is { Use: not OpenUse.Fermentation } or { Time: not null })
        {
            travels.Leave("ingredients", $"{culture.Name}: when it goes in; the file says only whether that is at racking");
        }

        if (culture.CellsBillions is { } cells)
        {
            travels.Leave("ingredients", Invariant($"{culture.Name}: {cells:0} billion cells"));
        }

        return culture with { Type = type, IsAddedToSecondary = isLate };
    }

    private static OpenMash Leave(OpenMash mash, BrewedFigures? figures, TravelList travels)
    {
        List<OpenMashStep> steps = [];
        foreach (OpenMashStep step in mash.Steps)
        {
            if (step.Type == MashStepType.Sparge)
            {
                travels.Leave("mash.sparge", $"{step.Name}, {step.Amount?.Text ?? "no litres said"}; the file has only its temperature");
            }
            else if (step.Type == MashStepType.SouringWort)
            {
                travels.Leave("souring", $"{step.Name}, {step.Time} at {step.Temperature}");
            }
            else
            {
                steps.Add(steps.Count == 0 && step.Amount is null ? First(step, figures) : step);
            }
        }

        return mash with { Steps = steps, SpargeTemperature = mash.Steps.FirstOrDefault(step => step.Type == MashStepType.Sparge)?.Temperature };
    }

    /// <summary>The first step pours what is planned; where nobody knows how much, it only holds its temperature.</summary>
    private static OpenMashStep First(OpenMashStep step, BrewedFigures? figures) => figures?.Strike is { } strike && UnitTable.TryParse(UnitTable.Format(strike, "L", 4), out Entered<VolumeAt20C> litres, out _)
        ? step with { Amount = litres }
        : step with { Type = MashStepType.Temperature };

    private static Entered<VolumeAt20C>? Batch(OpenRecipe open, TravelList travels)
    {
        travels.Default("boil", $"{open.Batch} at the beginning of the boil, as many as go into the fermenter: nobody has reckoned them");
        return open.Batch;
    }

    private static void WhatStays(OpenRecipe open, TravelList travels)
    {
        if (open.Stand is { } stand)
        {
            travels.Leave("stand", $"{stand.Time} at {stand.Temperature}");
        }

        if (open.Packages.FirstOrDefault() is { } package)
        {
            travels.Leave("package", $"{open.Packaged} in \"{package.Name}\"; the file has only the litres into the fermenter");
        }

        foreach (OpenStep step in open.Ferment.Skip(3))
        {
            travels.Leave("ferment", $"{step.Time} at {step.Start}; the file has three rests");
        }

        travels.Default("", "the style \"None\": the file wants one");
    }
}
