using System.Text;
using Gylebook.Forecast.Json;
using Gylebook.Gyles.Cellar;
using Gylebook.Terminal;
using Gylebook.Web.Features.Gyles;
using Gylebook.Web.Features.Gyles.Cellar;

namespace Gylebook.Verbs.Gyles;

/// <summary>A table of readings from a file, and what became of it.</summary>
internal static class CsvTable
{
    /// <summary>Takes it into a gyle, and tells.</summary>
    /// <returns>The exit code: 1 when nothing could be taken of it, or lines were refused.</returns>
    public static async Task<int> TakeAsync(GyleDesk desk, GyleReadVerb.Settings settings, OpenGyle gyle, string file, CancellationToken cancellation)
    {
        if (!File.Exists(file))
        {
            Console.Error.WriteLine(CommandLine.OneLine($"{file}: there is no such file."));
            return 1;
        }

        long bytes = new FileInfo(file).Length;
        if (bytes > TableIntake.MostBytes)
        {
            Console.Error.WriteLine(CommandLine.OneLine(Invariant($"{file} has {bytes} bytes; at most {TableIntake.MostBytes} are taken.")));
            return 1;
        }

        if (gyle.Line.Portions.FirstOrDefault(portion => settings.Portion is null || portion.Name == settings.Portion) is not { } into)
        {
            Console.Error.WriteLine(CommandLine.OneLine($"\"{settings.Portion}\" is no portion of this gyle; there are {string.Join(", ", gyle.Line.Portions.Select(portion => portion.Name))}."));
            return 1;
        }

        string text = await File.ReadAllTextAsync(file, Encoding.UTF8, cancellation);
        TableReport report = await TableIntake.TakeAsync(desk.Book, into.Id, settings.Called ?? Path.GetFileName(file), text, TimeProvider.System, cancellation);
        Tell(report, settings.Json);
        return report.Fault is null && report.Refused.Count == 0 ? 0 : 1;
    }

    private static void Tell(TableReport report, bool json)
    {
        if (json)
        {
            Console.WriteLine(JsonPen.Write(pen =>
            {
                pen.Number("taken", report.Taken, 0);
                pen.Number("known", report.Known, 0);
                pen.List("refused", report.Refused, line =>
                {
                    pen.Number("line", line.Line, 0);
                    pen.Text("why", line.Why);
                });
                pen.Texts("passedOver", report.PassedOver);
                pen.Text("fault", report.Fault);
            }));
            return;
        }

        (report.Fault is null ? Console.Out : Console.Error).WriteLine(CommandLine.OneLine(report.Sentence));
        foreach (RefusedLine line in report.Refused.Take(TableReport.MostTold))
        {
            Console.Error.WriteLine(CommandLine.OneLine(Invariant($"line {line.Line}: {line.Why}")));
        }
    }
}
