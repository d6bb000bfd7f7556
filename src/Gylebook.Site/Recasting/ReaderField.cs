using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;

namespace Gylebook.Site.Recasting;

/// <summary>Something a follower says of their own kit, shelf or thirst: a field of the recipe's file or the kit's, under a short name in the address.</summary>
/// <param name="Key">Its name in the address: <c>boils</c>.</param>
/// <param name="Label">What the page asks.</param>
/// <param name="Path">Which field, as findings name it.</param>
/// <param name="IsOfKit">Whether it is the kit's; else the recipe's.</param>
public sealed record ReaderField(string Key, string Label, string Path, bool IsOfKit = true)
{
    /// <summary>The way to mash it is asked for alone: <c>bag</c> or <c>tun</c>; null for both.</summary>
    public string? With => IsOfKit && Path.Split('.') is [MashBag or MashTun, _] ? Path.Split('.')[0] : null;

    /// <summary>What a part says that the published kit lacks.</summary>
    public string? Usual => With is null ? null : (With == MashTun ? UsualParts.Tun : UsualParts.Bag).FirstOrDefault(part => part.Key == Path.Split('.')[1]).Text;

    /// <summary>A bag in the kettle.</summary>
    public const string MashBag = "bag";

    /// <summary>A tun.</summary>
    public const string MashTun = "tun";

    /// <summary>How the mash stands: <c>bag</c> or <c>tun</c>.</summary>
    public const string Method = "mash";

    /// <summary>How much beer is wanted.</summary>
    public const string Beer = "beer";

    /// <summary>How many things may be taken in place of others.</summary>
    public const int MostSwaps = 3;

    private static readonly ReaderField BagKeeps = new("keeps", "A kilogram of grain keeps", "bag.liquorKept");

    private static readonly ReaderField[] OfTun =
        [new("tun", "Mash tun, to the brim", "tun.brim"), new("under", "Below the tun's outlet", "tun.deadSpace"), new("bed", "A kilogram of grain keeps, in a tun", "tun.liquorKept")];

    /// <summary>What is asked of a recipe on a kit, in the order of the page.</summary>
    public static IReadOnlyList<ReaderField> Of(Recipe recipe, Kit kit)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        ArgumentNullException.ThrowIfNull(kit);
        return
        [
            new(Beer, "Beer you want", "package.volume", IsOfKit: false),
            new("kettle", "Kettle, to the brim", "kettle.brim"),
            new("boils", "Boils off in an hour", "kettle.evaporation"),
            new("left", "Left in the kettle", "kettle.leftBehind"),
            .. AsksMethod(recipe) || kit.Bag is not null ? [BagKeeps] : Array.Empty<ReaderField>(),
            .. AsksMethod(recipe) || kit.Tun is not null ? OfTun : [],
            new("fermenter", "Fermenter, to the brim", "fermenter.brim"),
            new("height", "Height above the sea", "altitude"),
            .. recipe.Ingredients.Index().Where(entry => entry.Item.Kind == IngredientKind.Hop)
                .Select(entry => new ReaderField(Invariant($"alpha{entry.Index}"), $"Alpha of your {entry.Item.As ?? entry.Item.Of}", Invariant($"ingredients[{entry.Index}].alpha"), IsOfKit: false)),
        ];
    }

    /// <summary>Whether the follower may mash the other way: not where nothing is mashed, or a little beside extract.</summary>
    public static bool AsksMethod(Recipe recipe) => recipe.Mash?.Method is MashMethod.Bag or MashMethod.Tun;

    /// <summary>In the address, which line the n-th swap leaves out.</summary>
    public static string Without(int swap) => Invariant($"without{swap}");

    /// <summary>In the address, what the n-th swap takes instead.</summary>
    public static string Instead(int swap) => Invariant($"instead{swap}");
}
