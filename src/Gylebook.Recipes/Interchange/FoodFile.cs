using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Forms;

namespace Gylebook.Recipes.Interchange;

/// <summary>Food sheets, <c>gylebook-food/1</c>: a label typed as printed, an analysis, or both; see <c>docs/guide/files.md</c>.</summary>
/// <remarks>
/// Label figures keep their text. Energy and the figures of an analysis are kept as numbers, so that the first writing may
/// word them anew ("460 kJ" becomes kilocalories); the second changes nothing.
/// </remarks>
public static class FoodFile
{
    /// <summary>What the file's <c>format</c> key says.</summary>
    public const string Format = "gylebook-food/1";

    /// <summary>The table of its fields.</summary>
    public static FileForm<FoodSheet> Form => FoodForm.File;

    /// <summary>Reads a food sheet from the text of a file.</summary>
    public static Reading<FoodSheet> Read(string text) => Form.Read(text);

    /// <summary>Reads a food sheet from an open file; the stream stays open.</summary>
    public static Reading<FoodSheet> Read(Stream stream) => Form.Read(stream);

    /// <summary>Reads a food sheet from UTF-8 bytes.</summary>
    public static Reading<FoodSheet> Read(ReadOnlyMemory<byte> bytes) => Form.Read(bytes);

    /// <summary>The text of the food sheet's file: keys in a fixed order, label figures as they were typed.</summary>
    public static string Write(FoodSheet food) => Form.Write(food);
}
