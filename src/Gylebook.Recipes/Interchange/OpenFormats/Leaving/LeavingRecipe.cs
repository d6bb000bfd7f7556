using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange.OpenFormats.Model;
using Gylebook.Recipes.Kits;
using Gylebook.Recipes.Larders;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.OpenFormats.Leaving;

/// <summary>A recipe of ours as the open standards have it, and what stays behind.</summary>
internal sealed class LeavingRecipe
{
    /// <summary>What is written where nobody has reckoned it. Common practice, no source.</summary>
    private const double UsualBrewhousePercent = 70;

    /// <summary>What is written for the grain, which a recipe of ours does not say. Common practice, no source.</summary>
    private const double RoomCelsius = 20;

    private readonly Recipe _recipe;
    private readonly BrewedFigures _figures;
    private readonly TravelList _travels;
    private readonly LeavingLines _lines;

    private LeavingRecipe(Recipe recipe, Larder larder, BrewedFigures? figures, TravelList travels)
    {
        (_recipe, _figures, _travels) = (recipe, figures ?? new BrewedFigures(), travels);
        _lines = new LeavingLines(recipe, larder, travels);
    }

    /// <summary>The recipe.</summary>
    /// <param name="recipe">Ours.</param>
    /// <param name="larder">Where its lines are looked up before the tables.</param>
    /// <param name="figures">What it comes to; null when nobody has reckoned it.</param>
    /// <param name="author">Whose it is; empty for nobody's.</param>
    /// <param name="water">The water it is brewed with; null when nobody planned it.</param>
    /// <param name="travels">Takes what does not travel as it stands.</param>
    public static OpenRecipe Of(Recipe recipe, Larder larder, BrewedFigures? figures, string author, WaterPlan? water, TravelList travels)
    {
        OpenRecipe open = new LeavingRecipe(recipe, larder, figures, travels).Made(author);
        open = open with { Waters = water is null ? [] : LeavingWaters.Of(water, figures?.Strike, travels) };
        return open with { Notes = OpenNotes.With(recipe.Notes, travels.All) };
    }

    private OpenRecipe Made(string author)
    {
        WhatStays();
        OpenRecipe open = new()
        {
            Name = _recipe.Name,
            Author = author,
            Type = TypeOf(_recipe),
            Batch = Batch(),
            PreBoil = Computed(_figures.PreBoil),
            BoilTime = _recipe.Boil?.Time,
            Stand = _recipe.Stand,
            Mash = Mash(),
            Ferment = [.. _recipe.Ferment.Select((rest, i) => new OpenStep { Name = Invariant($"Rest {i + 1}"), Start = rest.Temperature, End = rest.Temperature, Time = rest.Time })],
            Packaged = _recipe.Package.Volume,
            Packages = [new OpenPackage { Name = _recipe.Package.In, Type = PackageOf(_recipe.Package.In) }],
            Carbonation = Carbonation(),
            Results = Results(),
        };
        open = _lines.Into(open);
        return open with { Brewhouse = Brewhouse() };
    }

    private void WhatStays()
    {
        if (_recipe.Story is not null)
        {
            _travels.Leave("story", "told on its published page, and in our own file");
        }

        if (_recipe.Hold is { OriginalGravity: { } gravity })
        {
            _travels.Leave("hold.originalGravity", $"{gravity} holds; the weights stand as they are");
        }

        if (_recipe.Hold is { Bitterness: { } bitterness })
        {
            _travels.Leave("hold.bitterness", $"{bitterness} holds; the weights stand as they are");
        }

        if (_recipe.Liquor?.TopUp is { } topUp)
        {
            _travels.Leave("liquor.topUp", $"{topUp} into the kettle at copper-up");
        }

        if (_recipe is { Liquor.Strike: { } strike, Mash: null or { Method: MashMethod.None } or { Rests: [] } })
        {
            _travels.Leave("liquor.strike", $"{strike}; only the first step of a mash has litres in this file");
        }

        foreach (PortionShare portion in _recipe.Portions)
        {
            _travels.Leave("portions", $"{portion.Share} of the cast is \"{portion.Name}\"; the whole cast is one beer in this file");
        }
    }

    private Entered<VolumeAt20C> Batch()
    {
        if (_figures.Cast is { } cast)
        {
            return Computed<VolumeAt20C>(cast)!.Value;
        }

        _travels.Default("package.volume", $"{_recipe.Package.Volume} packaged stand for the litres into the fermenter, which are more: nobody has reckoned them");
        return _recipe.Package.Volume;
    }

    private Entered<Fraction> Brewhouse()
    {
        if (_figures is { Cast: { } cast, OriginalGravity: { } gravity } && _lines.Brewhouse(cast, gravity) is { } reckoned)
        {
            return new(reckoned, Invariant($"{reckoned.Percent:0.0} %"));
        }

        _travels.Default("", Invariant($"{UsualBrewhousePercent} % of the grain's extract into the fermenter: a recipe of ours has no efficiency, the kit has; common practice, no source"));
        return new(Fraction.FromPercent(UsualBrewhousePercent), Invariant($"{UsualBrewhousePercent} %"));
    }

    private double? Carbonation()
    {
        if (_recipe.Package.Carbonation is not { } wish)
        {
            return null;
        }

        (decimal number, Tables.OpenUnit unit) = Tables.OpenUnits.Split(wish, [new("volumes", "volumes")], out bool isAsTyped);
        if (!isAsTyped)
        {
            _travels.Convert("package.carbonation", Invariant($"{wish} is written as {number:0.###} {unit.Theirs}"));
        }

        return (double)number;
    }

    private OpenMash? Mash()
    {
        if (_recipe.Mash is not { } mash)
        {
            return _recipe.Souring is null ? null : Named(MashMethod.None, [Souring(_recipe.Souring)]);
        }

        if (mash.Method == MashMethod.None || mash.Rests.Count == 0)
        {
            _travels.Leave("mash", $"{FileWords.MashMethods.Word(mash.Method)}, without a rest: there is no such mash in this file");
            return null;
        }

        List<OpenMashStep> steps = [.. mash.Rests.Select((rest, i) => new OpenMashStep
        {
            Name = Invariant($"Rest {i + 1}"),
            Type = i == 0 ? MashStepType.Infusion : MashStepType.Temperature,
            Amount = i == 0 ? _recipe.Liquor?.Strike : null,
            Temperature = rest.Temperature,
            Time = rest.Time,
        })];
        if (mash.Sparge.Method != SpargeMethod.None)
        {
            steps.Add(Sparge(mash));
        }

        if (_recipe.Souring is { } souring)
        {
            steps.Add(Souring(souring));
        }

        return Named(mash.Method, steps);
    }

    private OpenMash Named(MashMethod method, IReadOnlyList<OpenMashStep> steps)
    {
        _travels.Default("mash", Invariant($"grain of {RoomCelsius} °C before mashing: a recipe of ours does not say it, the kit does"));
        return new OpenMash { Name = MashNames.Word(method), GrainTemperature = new(Temperature.FromCelsius(RoomCelsius), Invariant($"{RoomCelsius} °C")), Steps = steps };
    }

    private static OpenMashStep Souring(SouringPlan souring) =>
        new() { Name = souring.Culture, Type = MashStepType.SouringWort, Temperature = souring.Temperature, Time = souring.Time, EndPh = souring.Ph.Value };

    private OpenMashStep Sparge(MashPlan mash)
    {
        if (mash.Sparge.Temperature is null)
        {
            _travels.Default("mash.sparge.temperature", $"{mash.Rests[^1].Temperature}, as the last rest: it is not said");
        }

        return new OpenMashStep
        {
            Name = FileWords.SpargeMethods.Word(mash.Sparge.Method),
            Type = MashStepType.Sparge,
            Amount = mash.Sparge.Volume,
            Temperature = mash.Sparge.Temperature ?? mash.Rests[^1].Temperature,
            Time = new(Duration.FromMinutes(0), "0 min"),
        };
    }

    private OpenResults Results() => new()
    {
        OriginalGravity = Computed(_figures.OriginalGravity, "SG", 5),
        FinalGravity = Computed(_figures.FinalGravity, "SG", 5),
        Alcohol = Computed(_figures.Alcohol, "%", 3),
        Bitterness = Computed(_figures.Bitterness, "IBU", 3),
        Colour = Computed(_figures.Colour, "EBC", 3),
    };

    private static Entered<T>? Computed<T>(T? value, string? unit = null, int digits = 4)
        where T : struct, IQuantity<T> =>
        value is { } there && UnitTable.TryParse(UnitTable.Format(there, unit ?? T.Limits.Unit, digits), out Entered<T> entered, out _) ? entered : null;

    private static RecipeType TypeOf(Recipe recipe) => recipe.Mash is { Method: not MashMethod.None } mash
        ? mash.Method == MashMethod.Part ? RecipeType.PartialMash : RecipeType.AllGrain
        : recipe.Ingredients.Any(line => line.Kind == IngredientKind.Extract) ? RecipeType.Extract : RecipeType.Other;

    private static PackageType PackageOf(string kind) =>
        PackageKind.IsKegCalled(kind) ? PackageType.Keg
        : kind.Contains("bottle", StringComparison.OrdinalIgnoreCase) ? PackageType.Bottle
        : kind.Contains("cask", StringComparison.OrdinalIgnoreCase) ? PackageType.Cask
        : PackageType.Other;
}
