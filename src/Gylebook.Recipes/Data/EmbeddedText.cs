using System.Text;

namespace Gylebook.Recipes.Data;

/// <summary>Text that travels inside this assembly.</summary>
internal static class EmbeddedText
{
    /// <summary>The text of that name.</summary>
    /// <exception cref="InvalidDataException">There is none.</exception>
    public static string Of(string name)
    {
        using Stream stream = typeof(EmbeddedText).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidDataException($"{name}: no such text in the assembly.");
        using StreamReader reader = new(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }
}
