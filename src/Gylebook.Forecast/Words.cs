using Gylebook.Engine.State;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Water;

namespace Gylebook.Forecast;

/// <summary>Words for what files and people call times, ions, models and ways.</summary>
public static class Words
{
    /// <summary>Who says so, where everybody does and nobody printed it.</summary>
    internal const string Trade = "common practice, no source";

    /// <summary>How every pH is meant: a sample cooled to 20 °C and free of gas.</summary>
    public const string PhAt20C = "pH at 20 °C";

    /// <summary>When something goes in, as recipes say it: <c>boil 60 min</c>.</summary>
    public static string Of(AdditionTime at) => Names.Said(at.ToPlace());

    /// <summary>The key an ion has in files: <c>calcium</c>.</summary>
    public static string Of(Ion ion) => ion.ToString().ToLowerInvariant();

    /// <summary>A model's name in files: <c>timeGravity</c>.</summary>
    public static string Of(BitternessModel model) => Camel(model.ToString());

    /// <summary>How grain is rinsed, as recipes say it: <c>pour</c>.</summary>
    public static string Of(SpargeMethod method) => Camel(method.ToString());

    /// <summary>How serious, in files and to people.</summary>
    public static string Of(Severity severity) => Camel(severity.ToString());

    /// <summary>A name at the head of a sentence: <c>Lactic acid</c>; pH stays as it is.</summary>
    public static string Sentence(string name) => name.Length == 0 || (name.Length > 1 && char.IsUpper(name[1])) ? name : char.ToUpperInvariant(name[0]) + name[1..];

    /// <summary>A title as it stands within a sentence: its first letter small, its units left as they are.</summary>
    public static string WithinSentence(string title) => title.Length == 0 || (title.Length > 1 && char.IsUpper(title[1])) ? title : Camel(title);

    private static string Camel(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}
