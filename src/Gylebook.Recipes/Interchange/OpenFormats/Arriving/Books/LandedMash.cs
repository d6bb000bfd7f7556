using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange.OpenFormats.Model;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange.OpenFormats.Arriving.Books;

/// <summary>A mash from elsewhere: its rests, its rinse, the liquor it starts in, and the souring that some put among its steps.</summary>
internal sealed class LandedMash(Landing landing, OpenRecipe recipe)
{
    /// <summary>Common practice, no source; the same a new recipe starts from.</summary>
    private static readonly Rest Usual = new(new(Temperature.FromCelsius(66), "66 °C"), new(Duration.FromMinutes(60), "60 min"));

    private TravelList Travels => landing.Travels;

    private IEnumerable<OpenMashStep> Steps => recipe.Mash?.Steps ?? [];

    /// <summary>The mash; null for none.</summary>
    public MashPlan? Plan(bool hasGrain)
    {
        OpenMashStep[] steps = [.. Steps.Where(step => step.Type is MashStepType.Infusion or MashStepType.Temperature or MashStepType.Decoction or null)];
        if (steps.Length == 0 && !hasGrain)
        {
            return null;
        }

        if (steps.Length == 0)
        {
            Travels.Default($"{recipe.Path}.mash", $"{Usual.Time} at {Usual.Temperature}: there is grain, and no mash that can be read; common practice, no source");
        }

        LeaveSteps();
        return new MashPlan(Method(), steps.Length == 0 ? [Usual] : [.. steps.Select(RestOf)], Sparge());
    }

    /// <summary>The liquor the mash starts in, where its first step pours it.</summary>
    public LiquorPlan? Liquor()
    {
        if (Steps.FirstOrDefault() is not { Type: MashStepType.Infusion, Amount: { } strike } first || strike.Value.Litres == 0)
        {
            return null;
        }

        Travels.Convert($"{first.Path}.amount", $"{strike} is fixed as strike liquor; empty it on the recipe's page to have it planned for your kit");
        return new LiquorPlan(strike, null);
    }

    /// <summary>Souring in the kettle; null for none.</summary>
    public SouringPlan? Souring()
    {
        OpenMashStep[] souring = [.. Steps.Where(step => step.Type is MashStepType.SouringWort or MashStepType.SouringMash)];
        foreach (OpenMashStep more in souring.Skip(1))
        {
            Travels.Leave(more.Path, $"{more.Name}: wort is soured once here");
        }

        if (souring.FirstOrDefault() is not { } step)
        {
            return null;
        }

        if (step is not { EndPh: { } ph and >= 0 and <= 14, Temperature: { } warm, Time: { } time })
        {
            Travels.Leave(step.Path, $"{step.Name}: souring needs its temperature, its time and the pH at its end");
            return null;
        }

        if (step.Type == MashStepType.SouringMash)
        {
            Travels.Convert(step.Path, $"{step.Name}: it sours in the mash there and in the kettle, before the boil, here");
        }

        return new SouringPlan(Culture(step), warm, new PhTarget(ph, Tables.OpenUnits.Digits(ph)), time);
    }

    private string Culture(OpenMashStep step)
    {
        if (step.Name is { } name && LacticCultures.Find(name).Match is not null)
        {
            return name;
        }

        Travels.Default($"{step.Path}.name", $"\"{step.Name}\" says no culture that sours; taken for lactobacillus");
        return "lactobacillus";
    }

    private MashMethod Method()
    {
        if (MashNames.Method(recipe.Mash?.Name) is { } told and not MashMethod.None)
        {
            return told;
        }

        MashMethod method = recipe.Type == RecipeType.PartialMash ? MashMethod.Part
            : landing.Wishes.Kit.Tun is null ? MashMethod.Bag : MashMethod.Tun;
        Travels.Default($"{recipe.Path}.mash", $"method {FileWords.MashMethods.Word(method)}, as the kit {landing.Wishes.Kit.Name} mashes: \"{FindingList.Shorten(recipe.Mash?.Name ?? "")}\" does not say it");
        return method;
    }

    private Rest RestOf(OpenMashStep step)
    {
        if (step.Type == MashStepType.Decoction)
        {
            Travels.Convert(step.Path, $"{step.Name}: a decoction counts as a rest; that part of the mash boils is not reckoned");
        }

        if (step.Temperature is null || step.Time is null)
        {
            Travels.Default(step.Path, $"{step.Name}: {step.Time?.Text ?? Usual.Time.Text} at {step.Temperature?.Text ?? Usual.Temperature.Text}, where the file says nothing that can be read; common practice, no source");
        }

        return new Rest(step.Temperature ?? Usual.Temperature, step.Time ?? Usual.Time);
    }

    private SpargePlan Sparge()
    {
        OpenMashStep[] rinses = [.. Steps.Where(step => step.Type == MashStepType.Sparge)];
        foreach (OpenMashStep more in rinses.Skip(1))
        {
            Travels.Leave(more.Path, $"{more.Name}: the grain is rinsed once here");
        }

        if (rinses.FirstOrDefault() is not { } rinse)
        {
            return SpargePlan.None;
        }

        if (rinse.Amount is null)
        {
            Travels.Leave(rinse.Path, $"{rinse.Name}: a rinse needs its litres");
            return SpargePlan.None;
        }

        if (rinse.Time is { Value.Minutes: > 0 } time)
        {
            Travels.Leave($"{rinse.Path}.step_time", $"{time}; a rinse has no time here");
        }

        SpargeMethod? told = MashNames.Sparge(rinse.Name);
        SpargeMethod method = told ?? (landing.Wishes.Kit.Tun is null ? SpargeMethod.Pour : SpargeMethod.Batch);
        if (told is null)
        {
            Travels.Default($"{rinse.Path}.name", $"{FileWords.SpargeMethods.Word(method)}: \"{rinse.Name}\" does not say how the grain is rinsed");
        }

        return new SpargePlan(method, rinse.Amount, rinse.Temperature);
    }

    private void LeaveSteps()
    {
        foreach (OpenMashStep step in Steps.Where(step => step.Type == MashStepType.Drain))
        {
            Travels.Leave(step.Path, $"{step.Name}: the run-off is no step here");
        }

        foreach (OpenMashStep step in Steps.Skip(1).Where(step => step.Type != MashStepType.Sparge && step.Amount is { Value.Litres: > 0 }))
        {
            Travels.Leave($"{step.Path}.amount", $"{step.Amount}; liquor is poured once here, and rinsed with once");
        }

        StepNames.Leave(Travels, recipe.Mash?.Path ?? recipe.Path, Steps.Where(step => step.Type is not (MashStepType.Sparge or MashStepType.SouringWort)).Select(step => step.Name));
    }
}
