using Bunit;
using Gylebook.Gyles;
using Gylebook.Gyles.Cellar;
using Gylebook.Science.Quantities;
using Gylebook.Store;
using Gylebook.Tests.Shared;
using Gylebook.Web.Features.Devices;
using Gylebook.Web.Features.Gyles;
using Gylebook.Web.Features.Gyles.Cellar;
using Microsoft.AspNetCore.Components.Forms;

namespace Gylebook.Web.Tests.Features;

/// <summary>Devices on their page, and tables of readings on a gyle's.</summary>
public sealed class DevicesTests : GylebookTestContext
{
    [Fact]
    public async Task A_token_is_shown_once_and_the_book_does_not_have_it()
    {
        IRenderedComponent<DevicesPage> page = Open();
        Assert.Contains("No device yet", page.Markup, StringComparison.Ordinal);
        page.Find("#add ~ form input").Change(" Red float ");
        page.Find("#add ~ form").Submit();
        page.WaitForAssertion(() => Assert.Contains("The token of Red float", page.Markup, StringComparison.Ordinal));
        string token = page.Find(".token p > code").TextContent;
        Assert.Equal((await Book.Devices.ListAsync(Cancellation))[0].Id, await new DeviceDesk(Book).FindAsync(token, Cancellation));
        Assert.DoesNotContain(token, await File.ReadAllTextAsync(BookFile, System.Text.Encoding.Latin1, Cancellation), StringComparison.Ordinal);

        page.FindAll(".token button")[0].Click();
        Assert.DoesNotContain(token, page.Markup, StringComparison.Ordinal);
        Assert.DoesNotContain(token, Open().Markup, StringComparison.Ordinal);

        // Another token makes the first worth nothing.
        page.FindAll(".devices button").First(button => button.TextContent.StartsWith("Another token", StringComparison.Ordinal)).Click();
        page.WaitForAssertion(() => Assert.NotEqual(token, page.Find(".token p > code").TextContent));
        Assert.Null(await new DeviceDesk(Book).FindAsync(token, Cancellation));
        Assert.Null(await new DeviceDesk(Book).FindAsync(new string('x', DeviceDesk.LongestToken + 1), Cancellation));
    }

    [Fact]
    public async Task It_tells_the_last_word_goes_into_a_gyle_learns_from_the_hydrometer_and_retires()
    {
        OpenGyle gyle = await StartedAsync();
        NewToken made = await new DeviceDesk(Book).AddAsync("Red float", DeviceKind.Floating, Cancellation);
        IRenderedComponent<DevicesPage> page = Open();
        Assert.Contains("It has not sent anything yet", page.Markup, StringComparison.Ordinal);
        await page.Find(".devices select").ChangeAsync(gyle.Whole.ToString(System.Globalization.CultureInfo.InvariantCulture));
        page.WaitForAssertion(() => Assert.Contains($"From now on what it sends belongs to {gyle.Line.Name}", page.Markup, StringComparison.Ordinal));
        Assert.Equal(gyle.Whole, (await Book.Devices.FindAsync(made.Id, Cancellation))!.Place!.PortionId);

        DateTimeOffset now = Clock.GetUtcNow();
        await Book.Sensors.AppendAsync([new SensorBatch(made.Id, [new SensorReading(now, now) { Gravity = SpecificGravity.FromRatio(1.050), Temperature = Temperature.FromCelsius(18), BatteryVolts = 3.9 }])], Cancellation);
        await Book.Readings.AddAsync(gyle.Whole, [new GyleReading { At = now.AddMinutes(-20), EntryId = Guid.CreateVersion7(), Stage = "ferment", Gravity = SpecificGravity.FromRatio(1.047) }], Cancellation);
        Press(page, "Learn from the hydrometer");
        page.WaitForAssertion(() => Assert.Contains("1.047", page.Find(".last").TextContent, StringComparison.Ordinal));
        Assert.Contains("Learnt from 1 reading.", page.Markup, StringComparison.Ordinal);
        Assert.Equal(-0.003, (await Book.Devices.FindAsync(made.Id, Cancellation))!.Calibration.OffsetSg, 1e-9);

        page.Find(".devices details input").Change("50");
        page.WaitForAssertion(() => Assert.Contains("offset of temperature \"50\" must be a number from -20 K to 20 K", page.Markup, StringComparison.Ordinal));
        page.Find(".devices details input").Change("0,5");
        page.WaitForAssertion(() => Assert.Contains("18.5", page.Find(".last").TextContent, StringComparison.Ordinal));

        Clock.Step(TimeSpan.FromHours(1));
        Press(page, "Retire it");
        page.WaitForAssertion(() => Assert.Contains("retired just now", page.Markup, StringComparison.Ordinal));
        Device retired = (await Book.Devices.FindAsync(made.Id, Cancellation))!;
        Assert.Equal((false, null), (retired.MaySend, retired.Place));
        Assert.Null(await new DeviceDesk(Book).FindAsync(made.Token, Cancellation));
        Assert.Equal(2, (await Book.Sensors.SeriesAsync([gyle.Whole], default, cancellation: Cancellation)).Points.Count);
    }

    [Fact]
    public async Task A_table_is_taken_once_and_its_bad_lines_are_told()
    {
        OpenGyle gyle = await StartedAsync();
        IRenderedComponent<CsvIntake> part = RenderMetric<CsvIntake>(with => with.Add(p => p.Portion, gyle.Whole));
        InputFileContent table = InputFileContent.CreateFromText("time,gravity (°P)\n2026-03-01T18:00:00Z,12.1\n2026-03-01T18:15:00Z,warm\n", "logger.csv");
        part.FindComponent<InputFile>().UploadFiles(table);
        part.WaitForAssertion(() => Assert.Contains("1 reading taken, 0 known already, 1 line refused.", part.Markup, StringComparison.Ordinal));
        Assert.Contains("Line 3: gravity warm", part.Markup, StringComparison.Ordinal);
        part.FindComponent<InputFile>().UploadFiles(table);
        part.WaitForAssertion(() => Assert.Contains("0 readings taken, 1 known already", part.Markup, StringComparison.Ordinal));
        part.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText("a,b\n", "odd.csv"));
        part.WaitForAssertion(() => Assert.Contains("Nothing was taken: the first line names no column", part.Markup, StringComparison.Ordinal));
        Assert.Equal("logger.csv", Assert.Single((await Book.Sensors.SeriesAsync([gyle.Whole], default, cancellation: Cancellation)).Points).Instrument);

        // A file is no device that sends: the page of devices does not list it.
        Assert.Contains("No device yet", Open().Markup, StringComparison.Ordinal);
    }

    private IRenderedComponent<DevicesPage> Open()
    {
        SetRendererInfo(new("Server", true));
        return RenderMetric<DevicesPage>();
    }

    private static void Press(IRenderedComponent<DevicesPage> page, string words) =>
        page.FindAll(".devices button").First(button => button.TextContent.StartsWith(words, StringComparison.Ordinal)).Click();

    private async Task<OpenGyle> StartedAsync()
    {
        Guid recipe = await Book.Recipes.CreateAsync(File.ReadAllText(RepositoryFile.PathOf("samples/recipes/plain-bitter.json")), cancellation: Cancellation);
        (GyleLine? gyle, _) = await Gyles.StartAsync(recipe, cancellation: Cancellation);
        return (await Gyles.OpenAsync(gyle!.Id, Cancellation))!;
    }
}
