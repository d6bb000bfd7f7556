using Gylebook.Recipes.Liquors;

namespace Gylebook.Recipes.Interchange;

/// <summary>Water plans, <c>gylebook-water/1</c>: a report as printed, wishes, salts and acids; see <c>docs/guide/water.md</c>.</summary>
public static class WaterFile
{
    /// <summary>What the file's <c>format</c> key says.</summary>
    public const string Format = "gylebook-water/1";

    private static readonly FileForm<WaterPlan> Form = new(Format, WaterReader.Read);

    /// <summary>Reads a water plan from the text of a file.</summary>
    public static Reading<WaterPlan> Read(string text) => Form.From(text);

    /// <summary>Reads a water plan from an open file; the stream stays open.</summary>
    public static Reading<WaterPlan> Read(Stream stream) => Form.From(stream);

    /// <summary>Reads a water plan from UTF-8 bytes.</summary>
    public static Reading<WaterPlan> Read(ReadOnlyMemory<byte> bytes) => Form.From(bytes);
}
