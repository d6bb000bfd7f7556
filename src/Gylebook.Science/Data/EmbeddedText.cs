using System.Reflection;
using System.Text;

namespace Gylebook.Science.Data;

/// <summary>Text that travels inside an assembly, so that it runs anywhere, a browser too.</summary>
public static class EmbeddedText
{
    /// <summary>The text of that name.</summary>
    /// <param name="assembly">Who carries it.</param>
    /// <param name="name">Its name there, such as <c>data/malts.csv</c>.</param>
    /// <exception cref="InvalidDataException">There is none.</exception>
    public static string Of(Assembly assembly, string name)
    {
        ArgumentNullException.ThrowIfNull(assembly);
        using Stream stream = assembly.GetManifestResourceStream(name)
            ?? throw new InvalidDataException($"{name}: no such text in the assembly.");
        using StreamReader reader = new(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }
}
