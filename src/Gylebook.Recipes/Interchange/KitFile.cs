using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Kits;

namespace Gylebook.Recipes.Interchange;

/// <summary>Kit files, <c>gylebook-kit/1</c>: one brewer's equipment as JSON; see <c>docs/guide/files.md</c>.</summary>
/// <remarks>
/// Figures a brewer seldom knows may be left out and are then taken from the starting values, each with a note among the
/// findings. Whether the kit makes sense is for <see cref="KitCheck"/>.
/// </remarks>
public static class KitFile
{
    /// <summary>What the file's <c>format</c> key says.</summary>
    public const string Format = "gylebook-kit/1";

    /// <summary>The table of its fields.</summary>
    public static FileForm<Kit> Form => KitForm.File;

    /// <summary>Reads a kit from the text of a file.</summary>
    public static Reading<Kit> Read(string text) => Form.Read(text);

    /// <summary>Reads a kit from an open file; the stream stays open.</summary>
    public static Reading<Kit> Read(Stream stream) => Form.Read(stream);

    /// <summary>Reads a kit from UTF-8 bytes.</summary>
    public static Reading<Kit> Read(ReadOnlyMemory<byte> bytes) => Form.Read(bytes);

    /// <summary>The text of the kit's file: keys in a fixed order, quantities as they were typed.</summary>
    public static string Write(Kit kit) => Form.Write(kit);
}
