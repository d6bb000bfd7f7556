using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using Gylebook.Forecast.Json;
using Gylebook.Gyles.Cellar;
using Gylebook.Terminal;
using Gylebook.Web.Hosting;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs.Devices;

/// <summary>gylebook simulate-sensor [--to URL] --token TOKEN [--count N] [--rate N] [--seed WORD] [--from TIME] [--every MINUTES] [--spikes SHARE] [--stuck-after HOURS] [--csv] [--json]</summary>
internal sealed class SimulateSensorVerb : AsyncCommand<SimulateSensorVerb.Settings>
{
    /// <summary>A fortnight of quarters of an hour.</summary>
    private const int UsualCount = 14 * 24 * 4;

    private const int MostCount = 1_000_000;
    private const double MostRate = 1_000_000, MostMinutes = 1440, MostHours = 10_000;

    /// <summary>What it takes.</summary>
    internal sealed class Settings : JsonSettings
    {
        /// <summary>Where to.</summary>
        [CommandOption("--to <URL>")]
        [Description("The address of the book; http://localhost:5080 when unsaid.")]
        public string To { get; init; } = WebBook.DefaultUrl;

        /// <summary>The token.</summary>
        [CommandOption("--token <TOKEN>")]
        [Description("The token of the device that it passes itself off as.")]
        public string? Token { get; init; }

        /// <summary>How many.</summary>
        [CommandOption("--count <N>")]
        [Description("How many readings: 1344 when unsaid, a fortnight of them.")]
        public int Count { get; init; } = UsualCount;

        /// <summary>How fast.</summary>
        [CommandOption("--rate <N>")]
        [Description("Readings a second that it sends at most; as fast as the book takes them when unsaid.")]
        public double? Rate { get; init; }

        /// <summary>The seed.</summary>
        [CommandOption("--seed <WORD>")]
        [Description("The word its noise is drawn with; the same word draws the same.")]
        public string Seed { get; init; } = "float";

        /// <summary>When it begins.</summary>
        [CommandOption("--from <TIME>")]
        [Description("When the first reading was taken: 2026-03-01T18:00:00Z. When unsaid, so that the last is of now.")]
        public string? From { get; init; }

        /// <summary>Time between two.</summary>
        [CommandOption("--every <MINUTES>")]
        [Description("Minutes between two readings; 15 when unsaid.")]
        public double Every { get; init; } = 15;

        /// <summary>Share of spikes.</summary>
        [CommandOption("--spikes <SHARE>")]
        [Description("Share of the readings that stand far off, 0 to 1; none when unsaid.")]
        public double Spikes { get; init; }

        /// <summary>When it hangs.</summary>
        [CommandOption("--stuck-after <HOURS>")]
        [Description("Hours after which the float hangs; never when unsaid.")]
        public double? StuckAfter { get; init; }

        /// <summary>Whether to print.</summary>
        [CommandOption("--csv")]
        [Description("Print the readings as a table instead of sending them.")]
        public bool Csv { get; init; }

        /// <inheritdoc/>
        public override ValidationResult Validate() =>
            CommandLine.NoneLacksItsValue(("--to", "an address", To), ("--token", "a token", Token), ("--seed", "a word", Seed), ("--from", "a time", From)) is { Successful: false } lacking ? lacking
            : Token is null && !Csv ? ValidationResult.Error("Say a device's token with --token, or --csv to print a table. gylebook device add NAME tells one.")
            : !Uri.TryCreate(To, UriKind.Absolute, out Uri? to) || to.Scheme is not ("http" or "https") ? ValidationResult.Error($"--to {To}: an address is written like http://localhost:5080.")
            : From is not null && Began() is null ? ValidationResult.Error($"--from \"{From}\": a time is written like 2026-03-01T18:00:00Z.")
            : new (string Name, double Value, double Low, double High)[]
            {
                ("--count", Count, 1, MostCount), ("--rate", Rate ?? 1, 0.001, MostRate), ("--every", Every, 0.001, MostMinutes), ("--spikes", Spikes, 0, 1), ("--stuck-after", StuckAfter ?? 0, 0, MostHours),
            }.FirstOrDefault(option => !(option.Value >= option.Low && option.Value <= option.High)) is { Name: { } name } odd
                ? ValidationResult.Error(Invariant($"{name} {odd.Value}: must be a number from {odd.Low} to {odd.High}."))
            : ValidationResult.Success();

        /// <summary>The float that there is not.</summary>
        internal MadeUpFloat Float(DateTimeOffset now)
        {
            TimeSpan every = TimeSpan.FromMinutes(Every);
            return new MadeUpFloat { Seed = Seed, From = Began() ?? now - (every * (Count - 1)), Every = every, Spikes = Spikes, StuckAfterHours = StuckAfter };
        }

        private DateTimeOffset? Began() => From is not null && CsvReadings.TryTime(From, TimeProvider.System.LocalTimeZone, out DateTimeOffset at) ? at : null;
    }

    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        IEnumerable<SensorReading> readings = settings.Float(TimeProvider.System.GetUtcNow()).Readings(settings.Count);
        if (settings.Csv)
        {
            Print(readings);
            return 0;
        }

        var watch = Stopwatch.StartNew();
        using SensorSender sender = new(new Uri(settings.To), settings.Token!, settings.Rate);
        string? fault = await sender.SendAsync(readings, cancellationToken);
        double seconds = watch.Elapsed.TotalSeconds;
        if (settings.Json)
        {
            Console.WriteLine(JsonPen.Write(pen =>
            {
                pen.Number("taken", sender.Taken, 0);
                pen.Number("known", sender.Known, 0);
                pen.Number("refused", sender.Refused, 0);
                pen.Number("sentAgain", sender.SentAgain, 0);
                pen.Number("seconds", seconds, 2);
                pen.Text("fault", fault);
            }));
        }
        else
        {
            Console.WriteLine(Invariant($"Of {settings.Count} made-up readings the book took {sender.Taken} and knew {sender.Known}, in {seconds:0.0} s ({sender.Taken / Math.Max(seconds, 0.001):0} a second)."));
        }

        if (fault is not null && !settings.Json)
        {
            Console.Error.WriteLine(CommandLine.OneLine(fault));
        }

        return fault is null ? 0 : 1;
    }

    private static void Print(IEnumerable<SensorReading> readings)
    {
        Console.WriteLine("# Invented: a float that there is not, in a beer that nobody brewed.");
        Console.WriteLine("time,gravity,temperature,battery");
        foreach (SensorReading reading in readings)
        {
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture, $"{reading.At:yyyy-MM-ddTHH:mm:ssZ},{reading.Gravity!.Value.Ratio:0.0000},{reading.Temperature!.Value.Celsius:0.00},{reading.BatteryVolts:0.000}"));
        }
    }
}
