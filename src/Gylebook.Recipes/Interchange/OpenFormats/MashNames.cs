using Gylebook.Recipes.Forms;

namespace Gylebook.Recipes.Interchange.OpenFormats;

/// <summary>How a mash is called in the open standards, which know no bag.</summary>
internal static class MashNames
{
    private static readonly WordTable<MashMethod> Words = new(
        (MashMethod.Bag, "Mash in a bag"), (MashMethod.Tun, "Mash in a tun"), (MashMethod.Part, "Part mash"), (MashMethod.None, "No mash"));

    public static string Word(MashMethod method) => Words.Word(method);

    /// <summary>The method a name says; null when it says none.</summary>
    public static MashMethod? Method(string? name) => name is null ? null
        : Words.Value(name) ?? (name.Contains("bag", StringComparison.OrdinalIgnoreCase) ? MashMethod.Bag : null);

    /// <summary>How the grain is rinsed, by the name of a step; null when it says nothing.</summary>
    public static SpargeMethod? Sparge(string? name)
    {
        foreach ((SpargeMethod method, string word) in FileWords.SpargeMethods.Rows)
        {
            if (method != SpargeMethod.None && name?.Contains(word, StringComparison.OrdinalIgnoreCase) == true)
            {
                return method;
            }
        }

        return null;
    }
}
