using Gylebook.Tests.Shared;

namespace Gylebook.Cli.Tests;

/// <summary>gylebook forecast and check, run as a person runs them: what is printed where, and the same everywhere.</summary>
public sealed class ForecastTests
{
    private static readonly string Hedgerow = SampleFile.Recipe("hedgerow-brown");

    [Fact]
    public void The_run_is_told_from_water_to_glass()
    {
        Ran ran = GylebookProgram.Run(["forecast", Hedgerow]);
        Assert.Equal(("", 0), (ran.Errors, ran.ExitCode));
        string[] inOrder =
        [
            "Hedgerow Brown on the Lantern Shed kit", "strike", "mash", "lift", "copper-up", "knock-out", "cast", "ferment",
            "rack", "package", "pour", "held in the grain", "steam", "sludge", "low to high", "original gravity", "How sure", "Measure next: ", "Allergens", "Cautions", "Findings", "Balance",
        ];
        int from = 0;
        foreach (string word in inOrder)
        {
            int at = ran.Output.IndexOf(word, from, StringComparison.Ordinal);
            Assert.True(at >= 0, $"\"{word}\" is missing, or comes too early.");
            from = at;
        }
    }

    [Fact]
    public void A_line_fits_the_page_and_no_name_of_the_files_is_left_in_it()
    {
        string output = WarmProgram.Run(["forecast", Hedgerow]).Output;
        Assert.All(output.Split('\n'), line => Assert.InRange(line.Length, 0, 110));
        foreach (string stable in new[] { "copperUp", "knockOut", "heldInGrain", "alcoholByVolume", "colourSrm", "Per100ml" })
        {
            Assert.DoesNotContain(stable, output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Cautions_come_in_the_order_of_the_run()
    {
        string output = WarmProgram.Run(["forecast", Hedgerow]).Output;
        string[] places = ["  strike: ", "  lift: ", "  boil 60 min: ", "  ferment: ", "  ferment day 3: ", "  package: ", "  pour: "];
        int[] found = [.. places.Select(place => output.IndexOf(place, StringComparison.Ordinal))];
        Assert.DoesNotContain(-1, found);
        Assert.Equal(found.Order(), found);
    }

    [Fact]
    public void What_stops_a_brew_is_told_first()
    {
        Ran ran = GylebookProgram.Run(["forecast", SampleFile.Recipe("edges/kettle-too-small")]);
        Assert.Equal(1, ran.ExitCode);
        Assert.InRange(ran.Output.IndexOf("error, the kit, kettle, to the brim", StringComparison.Ordinal), 0, ran.Output.IndexOf("held in the grain", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("--json")]
    [InlineData]
    public void The_same_bytes_come_out_every_time_and_in_every_country(params string[] options)
    {
        string[] arguments = ["forecast", Hedgerow, .. options];
        Ran first = GylebookProgram.Run(arguments);
        Assert.Equal(first, GylebookProgram.Run(arguments));
        Assert.Equal(first, GylebookProgram.Run(arguments, "de_DE.UTF-8"));
        Assert.Equal(first, GylebookProgram.Run(arguments, "ar_SA.UTF-8"));
    }

    [Fact]
    public void A_seed_is_carried_along()
    {
        Assert.Contains("\"seed\": \"second try\"", WarmProgram.Run(["forecast", Hedgerow, "--seed", "second try", "--json"]).Output, StringComparison.Ordinal);
        Assert.Contains("\"seed\": \"hedgerow-brown\"", WarmProgram.Run(["forecast", Hedgerow, "--json"]).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_kit_file_of_the_shed_is_the_built_in_kit() => Assert.Equal(
        WarmProgram.Run(["forecast", Hedgerow, "--json"]),
        WarmProgram.Run(["forecast", Hedgerow, "--kit", SampleFile.Kit("lantern-shed"), "--json"]));

    [Fact]
    public void Check_knows_a_recipe_a_kit_and_a_food_by_their_format()
    {
        Assert.Equal(new Ran("Nothing found.\n", "", 0), GylebookProgram.Run(["check", SampleFile.Recipe("plain-bitter")]));
        Assert.Equal(new Ran("Nothing found.\n", "", 0), GylebookProgram.Run(["check", SampleFile.Kit("lantern-shed")]));
        Ran food = WarmProgram.Run(["check", SampleFile.Recipe("foods/pumpkin-seed-flour")]);
        Assert.Equal(("", 0), (food.Errors, food.ExitCode));
        Assert.Contains("The printed figures stand for: protein", food.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--help")]
    public void Help_names_the_verbs_with_an_example_each(params string[] arguments)
    {
        Ran ran = WarmProgram.Run(arguments);
        Assert.Equal(("", 0), (ran.Errors, ran.ExitCode));
        foreach (string verb in new[] { "forecast", "pitch", "check", "label", "convert" })
        {
            Assert.Contains($"    gylebook {verb} ", ran.Output, StringComparison.Ordinal);
            Assert.Contains($"\n    {verb} <", ran.Output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void What_verbs_share_they_say_in_the_same_words()
    {
        foreach (string verb in new[] { "forecast", "pitch", "check", "label" })
        {
            string help = string.Join(' ', WarmProgram.Run([verb, "--help"]).Output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
            Assert.Contains("--json Write one JSON object instead of text", help, StringComparison.Ordinal);
            Assert.Contains("--kit <FILE> The kit's file. Without one a brew is planned for the built-in Lantern Shed kit, and a dose of food for sea level", help, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("forecast")]
    [InlineData("check")]
    [InlineData("forecast", "a.json", "b.json")]
    [InlineData("forecast", "a.json", "--kit")]
    [InlineData("forecast", "a.json", "--seed")]
    [InlineData("forecast", "a.json", "--dice", "many")]
    [InlineData("forecast", "a.json", "--draws")]
    [InlineData("check", "a.json", "--kit")]
    public void Bad_usage_gets_one_line_and_exit_code_2(params string[] arguments)
    {
        Ran ran = WarmProgram.Run(arguments);
        Assert.Equal(("", 2), (ran.Output, ran.ExitCode));
        Assert.Single(ran.Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }

    [Fact]
    public void Draws_make_bands_and_none_of_them_the_likely_run_alone()
    {
        string drawn = WarmProgram.Run(["forecast", Hedgerow, "--json", "--draws", "300"]).Output;
        Assert.Contains("\"draws\": 300,", drawn, StringComparison.Ordinal);
        Assert.Contains("\"kind\": \"quantiles\"", drawn, StringComparison.Ordinal);
        Assert.Empty(PublishedSchema.Objections("forecast", drawn));
        Assert.NotEqual(drawn.Replace("hedgerow-brown", "other", StringComparison.Ordinal), WarmProgram.Run(["forecast", Hedgerow, "--json", "--draws", "300", "--seed", "other"]).Output);

        Ran likely = WarmProgram.Run(["forecast", Hedgerow, "--json", "--draws", "0"]);
        Assert.DoesNotContain("quantiles", likely.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("How sure", WarmProgram.Run(["forecast", Hedgerow, "--draws", "0"]).Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("99")]
    [InlineData("100001")]
    [InlineData("-5")]
    [InlineData("many")]
    public void A_number_of_draws_that_cannot_be_is_refused_with_its_limits(string draws) => Assert.Equal(
        new Ran("", $"--draws: {draws}; must be 0, or from 100 to 100000.\n", 1), WarmProgram.Run(["forecast", Hedgerow, $"--draws={draws}"]));
}
