using System.Collections.Frozen;
using Gylebook.Recipes;

namespace Gylebook.Forecast;

/// <summary>How loudly a caution speaks while a recipe is written. On brew day all are read in full.</summary>
public enum CautionWeight
{
    /// <summary>What is so on every brew day: only where all is read.</summary>
    Reminder,

    /// <summary>A mark of two or three words.</summary>
    Mark,

    /// <summary>In full, always: what bursts, poisons, makes ill, or stops the yeast.</summary>
    Grave,
}

/// <summary>A sort of caution.</summary>
/// <param name="Code">Its stable name.</param>
/// <param name="Severity">How much it weighs, unless one of its sort says otherwise.</param>
/// <param name="Weight">How loudly it speaks.</param>
/// <param name="Mark">It in two or three words.</param>
public sealed record CautionKind(string Code, Severity Severity, CautionWeight Weight, string Mark);

/// <summary>All sorts of caution there are: the one place that says how much each weighs. Our judgement.</summary>
public static class CautionKinds
{
    /// <summary>Each once, by code.</summary>
    public static IReadOnlyList<CautionKind> All { get; } =
    [
        new("acid.handle", Severity.Warning, CautionWeight.Mark, "acid burns"),
        new("alcohol", Severity.Note, CautionWeight.Reminder, "adults only"),
        new("alcohol.little", Severity.Warning, CautionWeight.Grave, "too little alcohol to keep it"),
        new("attenuation.range", Severity.Note, CautionWeight.Mark, "mash cooler than published"),
        new("bitterness.cool", Severity.Note, CautionWeight.Mark, "bitterness of a cool stand"),
        new("bitterness.dryHops", Severity.Note, CautionWeight.Mark, "dry hops count as no bitterness"),
        new("bitterness.height", Severity.Note, CautionWeight.Mark, "bitterness at this height"),
        new("bitterness.lowerBound", Severity.Note, CautionWeight.Mark, "at least this bitter"),
        new("bitterness.mashHops", Severity.Note, CautionWeight.Mark, "mash hops: one brewery's figure"),
        new("bitterness.range", Severity.Note, CautionWeight.Mark, "beyond the table of bitterness"),
        new("bitterness.solubility", Severity.Note, CautionWeight.Mark, "more alpha than dissolves"),
        new("boilover.hops", Severity.Warning, CautionWeight.Reminder, "boil-over"),
        new("boilover.powder", Severity.Warning, CautionWeight.Mark, "foams in hot wort"),
        new("boilover.syrup", Severity.Warning, CautionWeight.Mark, "burns on"),
        new("bottle.strayYeast", Severity.Warning, CautionWeight.Grave, "glass bursts"),
        new("bottle.unfermentedSugar", Severity.Warning, CautionWeight.Mark, "sugar in the package"),
        new("caffeine.serving", Severity.Note, CautionWeight.Mark, "caffeine"),
        new("caffeine.unknown", Severity.Note, CautionWeight.Mark, "caffeine, unknown"),
        new("chill.hoses", Severity.Warning, CautionWeight.Reminder, "hot hoses"),
        new("chill.hotVessel", Severity.Warning, CautionWeight.Mark, "closed hot vessel"),
        new("chill.scald", Severity.Warning, CautionWeight.Reminder, "first water scalds"),
        new("chill.slow", Severity.Warning, CautionWeight.Mark, "warm wort"),
        new("chill.warm", Severity.Note, CautionWeight.Mark, "comes out too warm"),
        new("clean.mixed", Severity.Warning, CautionWeight.Grave, "never mix cleaners"),
        new("co2.room", Severity.Warning, CautionWeight.Reminder, "carbon dioxide"),
        new("colour.lowerBound", Severity.Note, CautionWeight.Mark, "at least this dark"),
        new("colour.range", Severity.Note, CautionWeight.Mark, "darker than the colour law"),
        new("coumarin.cassia", Severity.Warning, CautionWeight.Grave, "coumarin"),
        new("coumarin.tonka", Severity.Error, CautionWeight.Grave, "tonka"),
        new("fat.head", Severity.Warning, CautionWeight.Mark, "fat spoils the head"),
        new("foam.fermenter", Severity.Warning, CautionWeight.Mark, "foams in the fermenter"),
        new("food.lowAcid", Severity.Warning, CautionWeight.Mark, "low in acid"),
        new("food.raw", Severity.Warning, CautionWeight.Mark, "raw food"),
        new("grapefruit.medicine", Severity.Warning, CautionWeight.Grave, "medicines"),
        new("gravity.range", Severity.Note, CautionWeight.Mark, "stronger than the sugar table"),
        new("gravity.strong", Severity.Note, CautionWeight.Mark, "strong: two gravities"),
        new("honey.diastase", Severity.Warning, CautionWeight.Mark, "raw honey may dry the beer"),
        new("ions.malt", Severity.Note, CautionWeight.Mark, "ions of malt estimated"),
        new("lift.heavy", Severity.Warning, CautionWeight.Mark, "heavy bag"),
        new("liquorice.pressure", Severity.Warning, CautionWeight.Grave, "blood pressure"),
        new("mash.conversion", Severity.Note, CautionWeight.Mark, "may not convert"),
        new("mash.shortRest", Severity.Note, CautionWeight.Mark, "short rests"),
        new("mash.thick", Severity.Note, CautionWeight.Mark, "thick mash"),
        new("mashPh.band", Severity.Note, CautionWeight.Mark, "mash pH is a range"),
        new("mashPh.learned", Severity.Note, CautionWeight.Mark, "what one reading teaches"),
        new("mashPh.unmeasured", Severity.Warning, CautionWeight.Mark, "acidity unknown: measure"),
        new("nutmeg.dose", Severity.Note, CautionWeight.Grave, "nutmeg"),
        new("oxygen.fire", Severity.Warning, CautionWeight.Mark, "oxygen feeds fire"),
        new("pets.feed", Severity.Warning, CautionWeight.Mark, "poisons dogs"),
        new("ph.foodAcids", Severity.Note, CautionWeight.Mark, "acid of foods not counted"),
        new("ph.foodsCounted", Severity.Note, CautionWeight.Mark, "acid of foods counted"),
        new("ph.width", Severity.Note, CautionWeight.Mark, "beer pH is a range"),
        new("pitch.doubtful", Severity.Note, CautionWeight.Mark, "cells in doubt"),
        new("pitch.nitrogen", Severity.Note, CautionWeight.Mark, "little food for yeast"),
        new("pitch.under", Severity.Warning, CautionWeight.Mark, "too few cells"),
        new("pitch.unknown", Severity.Note, CautionWeight.Mark, "cells unknown"),
        new("pits.cyanide", Severity.Warning, CautionWeight.Grave, "stones hold cyanide"),
        new("plant.conifer", Severity.Warning, CautionWeight.Grave, "be sure of the tree"),
        new("plant.elder", Severity.Warning, CautionWeight.Grave, "raw elder"),
        new("plant.gathered", Severity.Note, CautionWeight.Mark, "gathered plants"),
        new("plant.rhubarb", Severity.Warning, CautionWeight.Grave, "rhubarb leaves"),
        new("plant.wood", Severity.Warning, CautionWeight.Mark, "food-grade wood"),
        new("preservative.benzoate", Severity.Warning, CautionWeight.Grave, "stops yeast"),
        new("preservative.sorbate", Severity.Warning, CautionWeight.Grave, "stops yeast"),
        new("preservative.sulphite", Severity.Warning, CautionWeight.Grave, "sulphites"),
        new("preservative.unknown", Severity.Warning, CautionWeight.Grave, "stops yeast"),
        new("pressure.burst", Severity.Warning, CautionWeight.Mark, "gas goes on"),
        new("pressure.glass", Severity.Warning, CautionWeight.Grave, "glass bursts"),
        new("pressure.keg", Severity.Warning, CautionWeight.Grave, "pressure"),
        new("pressure.range", Severity.Note, CautionWeight.Mark, "beyond the gas chart"),
        new("pressure.rated", Severity.Warning, CautionWeight.Grave, "pressure"),
        new("pressure.shaken", Severity.Note, CautionWeight.Mark, "shaken: no law known"),
        new("safrole.calamus", Severity.Error, CautionWeight.Grave, "not allowed in food"),
        new("salt.handle", Severity.Warning, CautionWeight.Mark, "salt burns or irritates"),
        new("scald.boiledLiquor", Severity.Warning, CautionWeight.Reminder, "boiling water"),
        new("scald.liquor", Severity.Warning, CautionWeight.Reminder, "hot liquor"),
        new("scald.mash", Severity.Warning, CautionWeight.Reminder, "hot mash"),
        new("shelf.hurts", Severity.Warning, CautionWeight.Grave, "burns or irritates"),
        new("sodium.lowerBound", Severity.Note, CautionWeight.Mark, "sodium without liquor and malt"),
        new("souring.acid", Severity.Note, CautionWeight.Mark, "acid is an estimate"),
        new("souring.boil", Severity.Warning, CautionWeight.Reminder, "soured wort foams"),
        new("souring.discard", Severity.Warning, CautionWeight.Grave, "rot: throw it away"),
        new("souring.gas", Severity.Warning, CautionWeight.Mark, "gas in the kettle"),
        new("souring.germs", Severity.Warning, CautionWeight.Grave, "warm wort feeds germs"),
        new("souring.measure", Severity.Note, CautionWeight.Mark, "time unknown: measure"),
        new("souring.noMalt", Severity.Warning, CautionWeight.Mark, "nothing buffers it"),
        new("souring.yeast", Severity.Note, CautionWeight.Mark, "sour wort is hard on yeast"),
        new("starch.cookFirst", Severity.Warning, CautionWeight.Mark, "cook its starch first"),
        new("starch.later", Severity.Warning, CautionWeight.Mark, "starch haze"),
        new("starch.openLeft", Severity.Warning, CautionWeight.Mark, "starch without enzyme"),
        new("starter.hot", Severity.Warning, CautionWeight.Reminder, "starter boils over"),
        new("starter.range", Severity.Note, CautionWeight.Mark, "beyond the starter table"),
        new("trial.allergens", Severity.Warning, CautionWeight.Grave, "tell tasters what is in it"),
        new("trial.germs", Severity.Warning, CautionWeight.Mark, "raw powder in a glass"),
        new("trial.weigh", Severity.Note, CautionWeight.Mark, "weigh, do not count drops"),
        new("wort.measure", Severity.Warning, CautionWeight.Mark, "measure the wort"),
        new("yeast.harvest", Severity.Note, CautionWeight.Mark, "do not pitch this yeast again"),
        new("yeast.strongWort", Severity.Note, CautionWeight.Mark, "strong wort: pitch more"),
        new("yeast.told", Severity.Note, CautionWeight.Reminder, "attenuation is yours"),
        new("yeast.tolerance", Severity.Note, CautionWeight.Grave, "yeast may stop"),
    ];

    private static readonly FrozenDictionary<string, CautionKind> ByCode = All.ToFrozenDictionary(kind => kind.Code, StringComparer.Ordinal);

    /// <summary>The sort of that code.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Nobody has said how much it weighs: the caller's bug.</exception>
    public static CautionKind Of(string code) =>
        ByCode.GetValueOrDefault(code) ?? throw new ArgumentOutOfRangeException(nameof(code), code, "This sort of caution is not in the table.");
}
