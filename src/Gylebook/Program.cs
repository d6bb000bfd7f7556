using System.Text;
using Gylebook.Terminal;
using Gylebook.Verbs;
using Gylebook.Verbs.Devices;
using Gylebook.Verbs.Gyles;
using Spectre.Console.Cli;

// 0 fine, 1 a value that cannot be right or anything unforeseen, 2 words the command line does not know.
const int BadValue = 1;
const int BadUsage = 2;

// The parser shows five unless told otherwise: every verb is to show its own.
const int MostExamples = 50;

Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
PlainWriter.Guard();
CommandApp app = new();
app.Configure(verbs =>
{
    verbs.ConfigureConsole(TableConsole.Create());
    verbs.SetApplicationName("gylebook");
    verbs.SetApplicationVersion(typeof(ConvertVerb).Assembly.GetName().Version!.ToString(3));
    verbs.PropagateExceptions();
    verbs.UseStrictParsing();
    verbs.Settings.MaximumIndirectExamples = MostExamples;
    verbs.AddCommand<ServeVerb>("serve")
        .WithDescription("Opens the book in the browser; also what happens without any verb.")
        .WithExample("serve")
        .WithExample("serve", "--book", "my-book.sqlite", "--urls", "http://localhost:8080")
        .WithExample("serve", "--lan");
    verbs.AddCommand<PasswordVerb>("password")
        .WithDescription("Sets the password that is asked for when other devices can reach the book, or a helper's; it is typed, or piped in.")
        .WithExample("password")
        .WithExample("password", "--helper");
    verbs.AddCommand<ForecastVerb>("forecast")
        .WithDescription("Forecasts a recipe from water to glass, every litre and every loss named.")
        .WithExample("forecast", "samples/recipes/hedgerow-brown.json")
        .WithExample("forecast", "my-beer.json", "--kit", "my-kit.json", "--json")
        .WithExample("forecast", "my-beer.json", "--style", "\"Best Bitter\"");
    verbs.AddCommand<PitchVerb>("pitch")
        .WithDescription("Says how much yeast a recipe wants, how much it pitches, and which starter makes up for it.")
        .WithExample("pitch", "samples/recipes/plain-bitter.json", "--starter", "\"2 L\"", "--json");
    verbs.AddCommand<CarbonateVerb>("carbonate")
        .WithDescription("Says how much gas a keg takes up under a pressure, which pressure keeps it, or what a short burst does.")
        .WithExample("carbonate", "--temperature", "\"38 F\"", "--pressure", "\"12 psi\"")
        .WithExample("carbonate", "--temperature", "\"4 °C\"", "--volumes", "2.5", "--altitude", "\"1600 m\"")
        .WithExample("carbonate", "--temperature", "\"38 F\"", "--burst", "\"40 psi\"", "--hours", "12", "--into", "\"19 L\"");
    verbs.AddCommand<DraftVerb>("draft")
        .WithDescription("Makes a first recipe from a wish: strength, colour, bitterness, litres, and a food if you have one in mind.")
        .WithExample("draft", "--alcohol", "\"5 %\"", "--colour", "\"20 EBC\"", "--bitterness", "\"30 IBU\"", "--litres", "\"20 L\"", "--out", "my-first-beer.json")
        .WithExample("draft", "--gravity", "1.060", "--colour", "\"20 SRM\"", "--bitterness", "\"25 IBU\"", "--litres", "\"15 L\"", "--food", "\"roasted chestnuts\"", "--amount", "\"800 g\"");
    verbs.AddCommand<SolveVerb>("solve")
        .WithDescription("Weighs a recipe for the beer wanted: litres, gravity, bitterness, gas, shares of malts, all at once.")
        .WithExample("solve", "my-beer.json", "--for", "package=20L,og=1.054,ibu=28", "--out", "my-new-beer.json");
    verbs.AddCommand<ScaleVerb>("scale")
        .WithDescription("Weighs a recipe for another kit, so that the beer stays as it is: solved anew, not multiplied.")
        .WithExample("scale", "my-beer.json", "--kit", "my-kit.json", "--for", "package=10L", "--out", "my-small-beer.json");
    verbs.AddBranch("water", water =>
    {
        water.SetDescription("Finds salts and acids for a water plan; \"water acid\" the acid for one liquor.");
        water.SetDefaultCommand<WaterVerb>();
        water.AddCommand<WaterAcidVerb>("acid")
            .WithDescription("Tells how much acid brings a liquor from its pH to another.");
    });
    verbs.AddCommand<CheckVerb>("check")
        .WithDescription("Says what is wrong or doubtful in a recipe, kit or food file, or damaged in a book.")
        .WithExample("check", "my-beer.json")
        .WithExample("check", "my-book-march.sqlite", "--texts", "rescued");
    verbs.AddCommand<LabelVerb>("label")
        .WithDescription("Says what a food's label means, and what that much of it does to a beer, place by place.")
        .WithExample("label", "raisins-seedless", "--amount", "\"100 g\"", "--at", "package", "--into", "\"20 L\"");
    verbs.AddCommand<LearnVerb>("learn")
        .WithDescription("Proposes a kit's own figures from finished gyles and their readings; accepts those you say.")
        .WithExample("learn", "--kit", "my-kit.json", "my-beer.json=saturday.json", "my-beer.json=sunday.json")
        .WithExample("learn", "--kit", "my-kit.json", "my-beer.json=saturday.json", "--accept", "evaporation,wortHeld", "--out", "my-learned-kit.json");
    verbs.AddCommand<ImportVerb>("import")
        .WithDescription("Puts recipes, kits, water plans, foods and sheets of the larder into the book, letter for letter.")
        .WithExample("import", "my-beer.json", "my-kit.json")
        .WithExample("import", "my-beer.json", "--replace");
    verbs.AddCommand<ExportVerb>("export")
        .WithDescription("Takes one of them out of the book as its file, letter for letter, or a recipe as a sheet to print.")
        .WithExample("export", "\"Hedgerow Brown\"", "--out", "hedgerow-brown.json")
        .WithExample("export", "my-beer.json", "--as", "html", "--out", "my-beer.html")
        .WithExample("export", "\"Bitter, the first\"", "--as", "ics", "--out", "bitter.ics");
    verbs.AddCommand<PublishVerb>("publish")
        .WithDescription("Writes a folder that any web host can serve: recipes that readers weigh anew for their own kits, in their browsers.")
        .WithExample("publish", "\"Hedgerow Brown\"", "--to", "my-site", "--by", "\"Lantern Shed\"")
        .WithExample("publish", "my-beer.json", "--kit", "my-kit.json", "--to", "my-site", "--address", "https://example.org/beer/");
    verbs.AddBranch("gyle", gyle =>
    {
        gyle.SetDescription("Starts a gyle of a recipe, tells its brew day step by step, takes readings, and says what they mean.");
        gyle.AddCommand<GyleStartVerb>("start")
            .WithDescription("Starts a gyle: cuts a version of the recipe and freezes the plan, with all its bands.")
            .WithExample("gyle", "start", "\"Plain Bitter\"")
            .WithExample("gyle", "start", "my-beer.json", "--kit", "my-kit.json", "--as", "\"Bitter, the first\"");
        gyle.AddCommand<GylePlanVerb>("plan")
            .WithDescription("Means to brew a recipe on a day, in vessels that are free then; nothing is frozen yet.")
            .WithExample("gyle", "plan", "\"Plain Bitter\"", "--on", "2027-12-05", "--fermenter", "Left");
        gyle.AddCommand<GyleListVerb>("list")
            .WithDescription("Tells the gyles of the book.");
        gyle.AddCommand<GyleShowVerb>("show")
            .WithDescription("Tells a gyle: what was planned, what was read, what is expected now.");
        gyle.AddCommand<GyleStepsVerb>("steps")
            .WithDescription("Tells brew day step by step, and how far it is.");
        gyle.AddCommand<GyleReadVerb>("read")
            .WithDescription("Writes a reading into the log and forecasts anew: what it means, and the ways on.")
            .WithExample("gyle", "read", "\"Bitter, the first\"", "copper-up", "--gravity", "1.036", "--volume", "\"28.6 L\"", "--temperature", "\"24 °C\"");
        gyle.AddCommand<GylePutVerb>("put")
            .WithDescription("Something goes into the fermenter that the recipe does not have: it counts from then on.");
        gyle.AddCommand<GyleDivideVerb>("divide")
            .WithDescription("Shares the beer out over vessels: each portion has its readings, its course and its package.");
        gyle.AddCommand<GyleFinishedVerb>("finished")
            .WithDescription("Answers \"finished?\" with reasons, tells how the fermentation goes on, and what to do.");
        gyle.AddCommand<GyleFineVerb>("fine")
            .WithDescription("Tells doses of what helps beer to clear; --with and --amount write down what was given.");
        gyle.AddCommand<GyleHarvestVerb>("harvest")
            .WithDescription("Takes yeast out of the fermenter: a lot of the larder, which a recipe may pitch.")
            .WithExample("gyle", "harvest", "\"Bitter, the first\"", "--amount", "\"400 mL\"");
        gyle.AddCommand<GylePackageVerb>("package")
            .WithDescription("Tells what to weigh and set to package a gyle, or why not; --done writes it into the log.")
            .WithExample("gyle", "package", "\"Bitter, the first\"", "--in", "bottle", "--volumes", "2.3");
        gyle.AddCommand<GyleTasteVerb>("taste")
            .WithDescription("Writes down what a taster said, or what a panel answered, and tells what that shows.")
            .WithExample("gyle", "taste", "\"Bitter, the first\"", "--test", "triangle", "--tasters", "12", "--right", "8");
        gyle.AddCommand<GyleTaughtVerb>("taught")
            .WithDescription("Tells plan beside measured, and what a gyle taught its kit; --take takes a figure.");
        gyle.AddCommand<GyleDoVerb>("do")
            .WithDescription("Writes into the log what was done, ticks a step or something that went in, or takes an entry back.")
            .WithExample("gyle", "do", "\"Bitter, the first\"", "\"stirred twice\"", "--step", "strike");
    });
    verbs.AddBranch("device", device =>
    {
        device.SetDescription("Adds floats and other things that send readings, tells their last word, and says which gyle they are in.");
        device.AddCommand<DeviceAddVerb>("add")
            .WithDescription("Adds a device, and tells its token: this once.")
            .WithExample("device", "add", "\"red float\"", "--gyle", "\"Bitter, the first\"");
        device.AddCommand<DeviceListVerb>("list")
            .WithDescription("Tells the devices of the book, where they are, and what they said last.");
        device.AddCommand<DeviceMoveVerb>("move")
            .WithDescription("Puts a device into a gyle, or takes it out.")
            .WithExample("device", "move", "\"red float\"", "--gyle", "\"Bitter, the first\"")
            .WithExample("device", "move", "\"red float\"", "--out");
    });
    verbs.AddCommand<SimulateSensorVerb>("simulate-sensor")
        .WithDescription("Sends the readings of a float that there is not to a book, or prints them as a table: for trying out.")
        .WithExample("simulate-sensor", "--token", "TOKEN")
        .WithExample("simulate-sensor", "--csv", "--count", "200", "--seed", "monday");
    verbs.AddCommand<BackupVerb>("backup")
        .WithDescription("Copies the book into a file of its own, also while it is open, and checks the copy.")
        .WithExample("backup", "my-book-march.sqlite");
    verbs.AddCommand<RestoreVerb>("restore")
        .WithDescription("Puts a backup in the place of the book, which is kept beside it.")
        .WithExample("restore", "my-book-march.sqlite");
    verbs.AddCommand<ConvertVerb>("convert")
        .WithDescription("Writes a value in another unit, and nothing else.")
        .WithExample("convert", "\"12.5 P\"", "--to", "SG");
});

try
{
    return await app.RunAsync(CommandLine.WithVerb(args).Select(CommandLine.KeepNegativeNumber));
}
catch (CommandAppException badUsage)
{
    Console.Error.WriteLine(CommandLine.OneLine(badUsage.Message));
    return BadUsage;
}
#pragma warning disable CA1031 // The last door: whatever went wrong, a person reads one line and no stack trace.
catch (Exception unforeseen)
{
    Console.Error.WriteLine(CommandLine.OneLine(unforeseen.Message));
    return BadValue;
}
#pragma warning restore CA1031
