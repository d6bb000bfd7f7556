using System.ComponentModel;
using System.Globalization;
using Gylebook.Forecast.Json;
using Gylebook.Gyles.Tasting;
using Gylebook.Science.Senses;
using Gylebook.Web.Features.Gyles;
using Gylebook.Web.Features.Gyles.Glass;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs.Gyles;

/// <summary>gylebook gyle taste GYLE --by NAME [--mark SCALE=VALUE …] [--note TEXT], or --test KIND --tasters N --right N [--about TEXT]</summary>
internal sealed class GyleTasteVerb : GyleVerb<GyleTasteVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : PortionSettings
    {
        /// <summary>The taster.</summary>
        [CommandOption("--by <NAME>")]
        [Description("Who tasted.")]
        public string? By { get; init; }

        /// <summary>Marks.</summary>
        [CommandOption("--mark <MARKS>")]
        [Description("Marks from 0 to 10 on scales of your own: \"toasted seed=7, body=4\".")]
        public string? Mark { get; init; }

        /// <summary>Notes.</summary>
        [CommandOption("--note <TEXT>")]
        [Description("What they said.")]
        public string? Note { get; init; }

        /// <summary>A test.</summary>
        [CommandOption("--test <KIND>")]
        [Description("How a panel was asked: triangle, duo-trio, paired, paired-either-way or three-alternatives.")]
        public string? Test { get; init; }

        /// <summary>Tasters.</summary>
        [CommandOption("--tasters <COUNT>")]
        [Description("How many were asked.")]
        public string? Tasters { get; init; }

        /// <summary>Right answers.</summary>
        [CommandOption("--right <COUNT>")]
        [Description("How many answered right.")]
        public string? Right { get; init; }

        /// <summary>About what.</summary>
        [CommandOption("--about <TEXT>")]
        [Description("What the two beers were: \"with and without the flour\".")]
        public string? About { get; init; }

        /// <inheritdoc/>
        protected override IReadOnlyList<(string Name, string Wants, string? Value)> Valued =>
        [
            ("--by", "a name", By), ("--mark", "marks", Mark), ("--note", "a text", Note), ("--test", "a test", Test), ("--tasters", "a number", Tasters), ("--right", "a number", Right), ("--about", "a text", About), .. base.Valued,
        ];

        /// <inheritdoc/>
        public override ValidationResult Validate() => base.Validate() is { Successful: false } lacking ? lacking
            : By is null == Test is null ? ValidationResult.Error("Say who tasted (--by), or how a panel was asked (--test): one of the two.")
            : By is not null && Mark is null && Note is null ? ValidationResult.Error("--by: say what they tasted, with --mark or --note.")
            : Mark is not null && Marks() is null ? ValidationResult.Error($"--mark: {Mark}; write a scale and a number from 0 to 10, as in \"toasted seed=7\".")
            : Test is not null && Asked() is null ? ValidationResult.Error($"--test: {Test}; must be one of {string.Join(", ", Compared.Names.Keys)}, with --tasters and --right as whole numbers.")
            : Test is not null && Asked()!.Wrong is { } wrong ? ValidationResult.Error($"--{wrong}.")
            : ValidationResult.Success();

        /// <summary>The marks; null where one cannot be read.</summary>
        internal IReadOnlyList<TasteMark>? Marks()
        {
            List<TasteMark> marks = [];
            foreach (string typed in (Mark ?? "").Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
            {
                if (typed.Split('=', 2, StringSplitOptions.TrimEntries) is not [{ Length: > 0 } scale, var value]
                    || !double.TryParse(value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double number) || number > TasteMark.Most)
                {
                    return null;
                }

                marks.Add(new TasteMark(scale, "none", "much", number));
            }

            return marks;
        }

        /// <summary>The test; null where it cannot be read.</summary>
        internal Compared? Asked() => Test is not null && Compared.Names.TryGetValue(Test, out TasteTest test)
            && int.TryParse(Tasters, NumberStyles.None, CultureInfo.InvariantCulture, out int tasters) && int.TryParse(Right, NumberStyles.None, CultureInfo.InvariantCulture, out int right)
            ? new Compared(test, tasters, right, About?.Trim() ?? "two beers") : null;
    }

    /// <inheritdoc/>
    protected override async Task<int> TellAsync(GyleDesk desk, OpenGyle gyle, Settings settings, CancellationToken cancellation)
    {
        if (settings.IsWrong(gyle, isNeeded: settings.By is not null))
        {
            return 1;
        }

        GlassDesk glass = new(desk, TimeProvider.System);
        if (settings.Asked() is not { } asked)
        {
            await glass.TasteAsync(gyle, settings.Portion, new Tasted(settings.By!.Trim(), settings.Marks() ?? [], settings.Note?.Trim() ?? ""), cancellation);
            Console.WriteLine(settings.Json ? JsonPen.Write(pen => pen.Text("taster", settings.By)) : "Written into the log.");
            return 0;
        }

        await glass.CompareAsync(gyle, settings.Portion, asked, cancellation);
        string[] sentences = [.. ComparisonWords.Of(asked)];
        if (settings.Json)
        {
            Console.WriteLine(JsonPen.Write(pen =>
            {
                pen.Text("test", asked.Name);
                pen.Number("byChance", TasteTests.ByChance(asked.Test, asked.Right, asked.Tasters), 5);
                pen.Number("needed", TasteTests.CriticalCount(asked.Test, asked.Tasters, 0.05), 0);
                pen.Texts("words", sentences);
            }));
            return 0;
        }

        foreach (string sentence in sentences)
        {
            Console.WriteLine(sentence);
        }

        return 0;
    }
}
