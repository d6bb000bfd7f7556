using Gylebook.Recipes.Interchange.OpenFormats.Model;
using Gylebook.Recipes.Interchange.OpenFormats.Tables;

namespace Gylebook.Recipes.Interchange.BeerJson;

/// <summary>The fields of BeerJSON's ingredients, as records and as additions to a recipe.</summary>
internal static class BeerJsonThings
{
    private const string NoHome = "no field for it here";

    private static readonly OpenForm<OpenTiming> Timing = new OpenForm<OpenTiming>(new OpenTiming())
        .Row("use", "at", OpenLeaves.Word(BeerJsonWords.Uses), t => t.Use, (t, v) => t with { Use = v })
        .Row("time", "at", BeerJsonLeaves.Time, t => t.Time, (t, v) => t with { Time = v })
        .Row("duration", "at", BeerJsonLeaves.Time, t => t.Duration, (t, v) => t with { Duration = v }, "goes before `time` in the boil")
        .Row("step", "at", OpenLeaves.Number, t => t.Step, (t, v) => t with { Step = v }, "counted from 1")
        .Left("a line goes in at a time, and at once", "continuous", "specific_gravity", "pH");

    private static readonly OpenForm<OpenFermentable> Yield = new OpenForm<OpenFermentable>(new OpenFermentable())
        .Row("fine_grind", "figures.extract", BeerJsonLeaves.Percent, f => f.Yield, (f, v) => f with { Yield = v }, "grain: of dry matter")
        .Row("potential", "figures.extract", BeerJsonLeaves.Gravity, f => f.Potential, (f, v) => f with { Potential = v }, "where there is no fine_grind")
        .Left("the fine grind is kept", "coarse_grind", "fine_coarse_difference");

    /// <summary>A malt, an extract, a sugar or a food.</summary>
    public static readonly OpenForm<OpenFermentable> Fermentable = new OpenForm<OpenFermentable>(new OpenFermentable())
        .Placed((f, path) => f with { Path = path })
        .Row("name", "as", OpenLeaves.Text, f => f.Name, (f, v) => f with { Name = v })
        .Row("type", "malt, extract, sugar, food", OpenLeaves.Word(BeerJsonWords.Fermentables), f => f.Type, (f, v) => f with { Type = v })
        .Row("product_id", "malt, extract, sugar, food", OpenLeaves.Text, f => f.ProductId, (f, v) => f with { ProductId = v }, "an id of ours, in files of ours")
        .Row("grain_group", "like", OpenLeaves.Word(BeerJsonWords.Groups), f => f.Group, (f, v) => f with { Group = v })
        .Also("group", "grain_group")
        .Inside("yield", Yield, _ => true)
        .Row("color", "colour", BeerJsonLeaves.MaltColour, f => f.Colour, (f, v) => f with { Colour = v })
        .Row("amount", "amount", BeerJsonLeaves.Amount, f => f.Amount, (f, v) => f with { Amount = v })
        .Row("timing", "at", Timing, f => f.Timing, (f, v) => f with { Timing = v })
        .Row("moisture", "figures.moisture", BeerJsonLeaves.Percent, f => f.Moisture, (f, v) => f with { Moisture = v })
        .Row("diastatic_power", "figures.diastaticPower", BeerJsonLeaves.Power, f => f.DiastaticPower, (f, v) => f with { DiastaticPower = v })
        .Row("notes", "notes", OpenLeaves.Text, f => f.Notes, (f, v) => f with { Notes = v })
        .Row("inventory", "lots", Inventory(), f => f.Inventory, (f, v) => f with { Inventory = v })
        .Left(NoHome, "producer", "origin", "alpha_amylase", "protein", "kolbach_index", "max_in_batch", "recommend_mash", "glassy", "plump", "half", "mealy", "thru", "friability", "di_ph", "viscosity", "dms_p", "fan", "fermentability", "beta_glucan");

    /// <summary>A hop.</summary>
    public static readonly OpenForm<OpenHop> Hop = new OpenForm<OpenHop>(new OpenHop())
        .Placed((h, path) => h with { Path = path })
        .Row("name", "hop", OpenLeaves.Text, h => h.Name, (h, v) => h with { Name = v })
        .Row("product_id", "hop", OpenLeaves.Text, h => h.ProductId, (h, v) => h with { ProductId = v }, "an id of ours, in files of ours")
        .Row("form", "form", OpenLeaves.Word(BeerJsonWords.HopShapes), h => h.Form, (h, v) => h with { Form = v })
        .Row("alpha_acid", "alpha", BeerJsonLeaves.Percent, h => h.Alpha, (h, v) => h with { Alpha = v })
        .Row("beta_acid", "figures.beta", BeerJsonLeaves.Percent, h => h.Beta, (h, v) => h with { Beta = v }, "of a sheet; a line has none")
        .Row("percent_lost", "figures.lost", BeerJsonLeaves.Percent, h => h.Lost, (h, v) => h with { Lost = v })
        .Row("amount", "amount", BeerJsonLeaves.Amount, h => h.Amount, (h, v) => h with { Amount = v })
        .Row("timing", "at", Timing, h => h.Timing, (h, v) => h with { Timing = v })
        .Row("notes", "notes", OpenLeaves.Text, h => h.Notes, (h, v) => h with { Notes = v })
        .Row("inventory", "lots", Inventory(), h => h.Inventory, (h, v) => h with { Inventory = v })
        .Left(NoHome, "producer", "origin", "year", "type", "substitutes", "oil_content");

    /// <summary>A yeast or another culture.</summary>
    public static readonly OpenForm<OpenCulture> Culture = new OpenForm<OpenCulture>(new OpenCulture())
        .Placed((c, path) => c with { Path = path })
        .Row("name", "as", OpenLeaves.Text, c => c.Name, (c, v) => c with { Name = v })
        .Row("type", "yeast", OpenLeaves.Word(BeerJsonWords.Cultures), c => c.Type, (c, v) => c with { Type = v })
        .Row("form", "form", OpenLeaves.Word(BeerJsonWords.CultureForms), c => c.Form, (c, v) => c with { Form = v })
        .Row("product_id", "yeast", OpenLeaves.Text, c => c.ProductId, (c, v) => c with { ProductId = v }, "an id of ours, in files of ours")
        .Row("attenuation", "attenuation", BeerJsonLeaves.Percent, c => c.Attenuation, (c, v) => c with { Attenuation = v })
        .Row("attenuation_range", "figures.attenuation", BeerJsonLeaves.PercentRange, c => c.AttenuationRange, (c, v) => c with { AttenuationRange = v }, "its middle")
        .Row("cell_count_billions", "cells", OpenLeaves.Number, c => c.CellsBillions, (c, v) => c with { CellsBillions = v })
        .Row("amount", "amount", BeerJsonLeaves.Amount, c => c.Amount, (c, v) => c with { Amount = v })
        .Row("timing", "at", Timing, c => c.Timing, (c, v) => c with { Timing = v })
        .Row("notes", "notes", OpenLeaves.Text, c => c.Notes, (c, v) => c with { Notes = v })
        .Left(NoHome, "producer", "times_cultured", "temperature_range", "alcohol_tolerance", "flocculation", "best_for", "max_reuse", "pof", "glucoamylase", "inventory", "zymocide");

    /// <summary>Anything else.</summary>
    public static readonly OpenForm<OpenMisc> Misc = new OpenForm<OpenMisc>(new OpenMisc())
        .Placed((m, path) => m with { Path = path })
        .Row("name", "as", OpenLeaves.Text, m => m.Name, (m, v) => m with { Name = v })
        .Row("type", "spice, fining, salt, acid, food, water", OpenLeaves.Word(BeerJsonWords.Miscellaneous), m => m.Type, (m, v) => m with { Type = v })
        .Row("product_id", "spice, fining, salt, acid, food, water", OpenLeaves.Text, m => m.ProductId, (m, v) => m with { ProductId = v }, "an id of ours, in files of ours")
        .Row("amount", "amount", BeerJsonLeaves.Amount, m => m.Amount, (m, v) => m with { Amount = v })
        .Row("timing", "at", Timing, m => m.Timing, (m, v) => m with { Timing = v })
        .Row("notes", "notes", OpenLeaves.Text, m => m.Notes, (m, v) => m with { Notes = v })
        .Row("inventory", "lots", Inventory(), m => m.Inventory, (m, v) => m with { Inventory = v })
        .Left(NoHome, "producer", "use_for");

    /// <summary>A water.</summary>
    public static readonly OpenForm<OpenWater> Water = new OpenForm<OpenWater>(new OpenWater())
        .Placed((w, path) => w with { Path = path })
        .Row("name", "sources[].name", OpenLeaves.Text, w => w.Name, (w, v) => w with { Name = v })
        .Row("amount", "sources[].share", BeerJsonLeaves.Volume, w => w.Amount, (w, v) => w with { Amount = v }, "beside the others")
        .Row("calcium", "report.calcium", BeerJsonLeaves.Concentration, w => w.Calcium, (w, v) => w with { Calcium = v })
        .Row("bicarbonate", "report.bicarbonate", BeerJsonLeaves.Concentration, w => w.Bicarbonate, (w, v) => w with { Bicarbonate = v })
        .Row("carbonate", "report.carbonate", BeerJsonLeaves.Concentration, w => w.Carbonate, (w, v) => w with { Carbonate = v })
        .Row("sulfate", "report.sulphate", BeerJsonLeaves.Concentration, w => w.Sulphate, (w, v) => w with { Sulphate = v })
        .Row("chloride", "report.chloride", BeerJsonLeaves.Concentration, w => w.Chloride, (w, v) => w with { Chloride = v })
        .Row("sodium", "report.sodium", BeerJsonLeaves.Concentration, w => w.Sodium, (w, v) => w with { Sodium = v })
        .Row("magnesium", "report.magnesium", BeerJsonLeaves.Concentration, w => w.Magnesium, (w, v) => w with { Magnesium = v })
        .Row("potassium", "report.potassium", BeerJsonLeaves.Concentration, w => w.Potassium, (w, v) => w with { Potassium = v })
        .Row("nitrate", "report.nitrate", BeerJsonLeaves.Concentration, w => w.Nitrate, (w, v) => w with { Nitrate = v })
        .Row("pH", "report.ph", OpenLeaves.Number, w => w.Ph, (w, v) => w with { Ph = v })
        .Row("notes", "notes", OpenLeaves.Text, w => w.Notes, (w, v) => w with { Notes = v })
        .Left(NoHome, "producer", "iron", "nitrite", "flouride", "fluoride");

    private static OpenForm<OpenAmount> Inventory() => new OpenForm<OpenAmount>(new OpenAmount(null, null))
        .Row("amount", "lots[].amount", BeerJsonLeaves.Amount, a => a, (_, v) => v);
}
