using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Liquors;

namespace Gylebook.Recipes.Interchange;

/// <summary>Water plans, <c>gylebook-water/1</c>: a report as printed, wishes, salts and acids; see <c>docs/guide/water.md</c>.</summary>
public static class WaterFile
{
    /// <summary>What the file's <c>format</c> key says.</summary>
    public const string Format = "gylebook-water/1";

    /// <summary>The table of its fields.</summary>
    public static FileForm<WaterSheet> Form => WaterForm.File;

    /// <summary>Reads a water plan from the text of a file.</summary>
    public static Reading<WaterPlan> Read(string text) => Meant(Form.Read(text));

    /// <summary>Reads a water plan from an open file; the stream stays open.</summary>
    public static Reading<WaterPlan> Read(Stream stream) => Meant(Form.Read(stream));

    /// <summary>Reads a water plan from UTF-8 bytes.</summary>
    public static Reading<WaterPlan> Read(ReadOnlyMemory<byte> bytes) => Meant(Form.Read(bytes));

    /// <summary>The text of the plan's file: keys in a fixed order, quantities as they were typed.</summary>
    public static string Write(WaterSheet sheet) => Form.Write(sheet);

    /// <summary>What a sheet that was read means.</summary>
    public static Reading<WaterPlan> Meant(Reading<WaterSheet> sheet)
    {
        FindingList findings = new();
        foreach (Finding finding in sheet.Findings)
        {
            findings.Add(finding);
        }

        // What could be read is looked up even where something else could not: all findings at once.
        WaterPlan? plan = sheet.Rough is { } rough ? WaterMeaning.Of(rough, findings) : null;
        return new Reading<WaterPlan>(findings.HasErrors ? null : plan, findings.All);
    }
}
