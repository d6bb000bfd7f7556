using Gylebook.Gyles;
using Gylebook.Gyles.Vessels;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Quantities;

namespace Gylebook.Store.Tests;

public sealed class GyleTests : IAsyncLifetime
{
    private readonly Bench _bench = new();
    private Book _book = null!;
    private Guid _recipe;

    public async ValueTask InitializeAsync()
    {
        _book = await _bench.OpenAsync();
        _recipe = await _book.Recipes.CreateAsync(Bench.Recipe("Wheat"), cancellation: Bench.Cancellation);
    }

    public async ValueTask DisposeAsync()
    {
        await _book.DisposeAsync();
        _bench.Dispose();
    }

    [Fact]
    public async Task A_planned_gyle_has_frozen_nothing()
    {
        Guid kit = await _book.Kits.CreateAsync(Bench.Kit("Shed"), cancellation: Bench.Cancellation);
        DateTimeOffset saturday = _bench.Clock.Now.AddDays(3);

        Guid id = await _book.Gyles.PlanAsync(_recipe, "Gyle 1", kit, saturday, cancellation: Bench.Cancellation);

        GyleLine gyle = (await _book.Gyles.FindAsync(id, Bench.Cancellation))!;
        Assert.Equal((GyleStatus.Planned, null, saturday, kit), (gyle.Status, gyle.VersionNumber, gyle.Planned, gyle.KitId));
        Assert.Empty(gyle.Portions);
        Assert.Null(await _book.Gyles.PlanDocumentAsync(id, Bench.Cancellation));
        Assert.Empty(await _book.Versions.ListAsync(_recipe, Bench.Cancellation));
    }

    [Fact]
    public async Task Starting_cuts_the_version_and_freezes_the_plan_for_it()
    {
        Guid id = await _book.Gyles.PlanAsync(_recipe, "Gyle 1", cancellation: Bench.Cancellation);

        NumberedVersion version = await _book.Gyles.StartAsync(id, Bench.Plan, Bench.Cancellation);
        await _book.Drafts.SaveAsync(_recipe, 1, Bench.Recipe("Changed"), "Name", "tab", Bench.Cancellation);

        GyleLine gyle = Assert.Single(await _book.Gyles.ListAsync(Bench.Cancellation));
        Assert.Equal((CutReason.Gyle, "Gyle 1", Bench.Recipe("Wheat")), (version.Reason, version.Note, version.Document));
        Assert.Equal((GyleStatus.Brewing, 1, _bench.Clock.Now), (gyle.Status, gyle.VersionNumber, gyle.Started));
        Assert.Equal(Bench.Plan(version), await _book.Gyles.PlanDocumentAsync(id, Bench.Cancellation));
        Assert.Equal((BookGyles.Whole, 1.0), (gyle.Portions.Single().Name, gyle.Portions.Single().Share));
    }

    [Fact]
    public async Task A_plan_that_fails_starts_nothing_at_all()
    {
        Guid id = await _book.Gyles.PlanAsync(_recipe, "Gyle 1", cancellation: Bench.Cancellation);

        await Assert.ThrowsAsync<InvalidOperationException>(
            () => _book.Gyles.StartAsync(id, _ => throw new InvalidOperationException("no plan"), Bench.Cancellation));
        await Assert.ThrowsAsync<ArgumentException>(() => _book.Gyles.StartAsync(id, _ => "{}", Bench.Cancellation));

        Assert.Empty(await _book.Versions.ListAsync(_recipe, Bench.Cancellation));
        Assert.Equal(GyleStatus.Planned, (await _book.Gyles.FindAsync(id, Bench.Cancellation))!.Status);
    }

    [Fact]
    public async Task A_gyle_starts_once()
    {
        (Guid id, _) = await Bench.StartedAsync(_book);

        await Assert.ThrowsAsync<ArgumentOutOfRangeException>(() => _book.Gyles.StartAsync(id, Bench.Plan, Bench.Cancellation));
    }

    [Fact]
    public async Task A_divided_gyle_keeps_the_readings_of_its_portions_apart()
    {
        (Guid id, long whole) = await Bench.StartedAsync(_book);
        await _book.Gyles.DivideAsync(id, [("on fruit", 0.4), ("plain", 0.6)], "cast", Bench.Cancellation);
        await _book.Gyles.DivideAsync(id, [("on fruit", 0.5)], "ferment", Bench.Cancellation);
        GylePortion[] portions = [.. (await _book.Gyles.FindAsync(id, Bench.Cancellation))!.Portions];
        long fruit = portions[1].Id;
        await _book.Readings.AddAsync(whole, [At(1)], Bench.Cancellation);
        await _book.Readings.AddAsync(fruit, [At(2), At(3)], Bench.Cancellation);

        Assert.Equal([("whole", 1), ("on fruit", 0.5), ("plain", 0.6)], portions.Select(p => (p.Name, p.Share)));
        Assert.Single(await _book.Readings.ListAsync([whole], Bench.Cancellation));
        Assert.Equal(2, (await _book.Readings.ListAsync([fruit], Bench.Cancellation)).Count);
        Assert.Equal(3, (await _book.Readings.ListAsync([whole, fruit], Bench.Cancellation)).Count);
    }

    [Fact]
    public async Task A_reading_comes_back_as_it_was_read()
    {
        (_, long portion) = await Bench.StartedAsync(_book);
        var reading = new GyleReading
        {
            At = new DateTimeOffset(2026, 3, 14, 11, 0, 0, 123, TimeSpan.FromHours(2)).ToUniversalTime(),
            EntryId = Guid.CreateVersion7(),
            Stage = "copperUp",
            Instrument = "hydrometer",
            Gravity = SpecificGravity.FromRatio(1.0471),
            Volume = HotVolume.FromLitres(27.3),
            Temperature = Temperature.FromCelsius(66.4),
            Ph = 5.42,
            Pressure = GaugePressure.FromBar(0.8),
            Note = "a little foam",
        };

        await _book.Readings.AddAsync(portion, [reading], Bench.Cancellation);

        Logged<GyleReading> logged = Assert.Single(await _book.Readings.ListAsync([portion], Bench.Cancellation));
        Assert.Equal(new Logged<GyleReading>(logged.Id, portion, _bench.Clock.Now, reading), logged);
    }

    [Fact]
    public async Task An_action_comes_back_as_it_was_done()
    {
        (_, long portion) = await Bench.StartedAsync(_book);
        var action = new BrewAction
        {
            At = _bench.Clock.Now,
            What = "added 600 g toasted seed flour",
            EntryId = Guid.CreateVersion7(),
            Stage = "mash",
            Mass = Mass.FromKilograms(0.6),
            Volume = HotVolume.FromLitres(1),
            Temperature = Temperature.FromCelsius(66),
        };

        await _book.Readings.AddAsync(portion, [action], Bench.Cancellation);

        Logged<BrewAction> logged = Assert.Single(await _book.Readings.ActionsAsync([portion], Bench.Cancellation));
        Assert.Equal(action, logged.Entry);
    }

    [Fact]
    public async Task An_outbox_that_sends_twice_is_kept_once()
    {
        (_, long portion) = await Bench.StartedAsync(_book);
        GyleReading[] outbox = [At(1) with { EntryId = Guid.CreateVersion7() }, At(2) with { EntryId = Guid.CreateVersion7() }];

        Assert.Equal(1, await _book.Readings.AddAsync(portion, outbox[..1], Bench.Cancellation));
        Assert.Equal(1, await _book.Readings.AddAsync(portion, outbox, Bench.Cancellation));
        Assert.Equal(0, await _book.Readings.AddAsync(portion, [.. outbox, outbox[0]], Bench.Cancellation));

        Assert.Equal(2, (await _book.Readings.ListAsync([portion], Bench.Cancellation)).Count);
    }

    [Fact]
    public async Task A_mistake_is_corrected_by_a_later_reading_and_stays_readable()
    {
        (_, long portion) = await Bench.StartedAsync(_book);
        await _book.Readings.AddAsync(portion, [At(1)], Bench.Cancellation);
        long wrong = (await _book.Readings.ListAsync([portion], Bench.Cancellation))[0].Id;

        await _book.Readings.AddAsync(portion, [At(1) with { ReplacesId = wrong, Note = "misread" }], Bench.Cancellation);

        List<Logged<GyleReading>> log = await _book.Readings.ListAsync([portion], Bench.Cancellation);
        Assert.Equal([null, wrong], log.Select(line => line.Entry.ReplacesId));
    }

    [Fact]
    public async Task A_gyle_moves_on_goes_into_the_bin_and_comes_back()
    {
        (Guid id, _) = await Bench.StartedAsync(_book);

        await _book.Gyles.SetStatusAsync(id, GyleStatus.Fermenting, Bench.Cancellation);
        await _book.Gyles.DeleteAsync(id, Bench.Cancellation);
        Assert.Empty(await _book.Gyles.ListAsync(Bench.Cancellation));
        await _book.Gyles.RestoreAsync(id, Bench.Cancellation);

        Assert.Equal(GyleStatus.Fermenting, Assert.Single(await _book.Gyles.ListAsync(Bench.Cancellation)).Status);
    }

    [Fact]
    public async Task A_vessel_is_one_gyles_at_a_time_and_who_is_refused_changes_nothing()
    {
        Guid mild = (await _book.Gyles.PlanAsync(Wish("Mild", Stay("Left", 0, 10)), Bench.Cancellation)).Gyle!.Value;

        (Guid? none, IReadOnlyList<VesselClash> clashes) = await _book.Gyles.PlanAsync(Wish("Bitter", Stay("Left", 9, 20), Stay("Right", 9, 20)), Bench.Cancellation);
        Assert.Null(none);
        Assert.Equal(("Mild", "Left"), (Assert.Single(clashes).By.Gyle, clashes[0].Wanted.Vessel));
        Assert.Single(await _book.Gyles.ListAsync(Bench.Cancellation));

        Guid bitter = (await _book.Gyles.PlanAsync(Wish("Bitter", Stay("Left", 10, 20)), Bench.Cancellation)).Gyle!.Value;
        Assert.NotEmpty(await _book.Gyles.ArrangeAsync(bitter, Wish("Moved", Stay("Left", 5, 15)), Bench.Cancellation));
        Assert.Equal(("Bitter", Stay("Left", 10, 20)), await ShownAsync(bitter));
        Assert.Empty(await _book.Gyles.ArrangeAsync(bitter, Wish("Moved", Stay("Right", 5, 15)), Bench.Cancellation));
        Assert.Equal(("Moved", Stay("Right", 5, 15)), await ShownAsync(bitter));
        Assert.Equal([mild, bitter], (await _book.Gyles.VesselsAsync(Bench.Cancellation)).Select(hold => hold.GyleId));

        // What is in the bin has no vessel.
        await _book.Gyles.DeleteAsync(mild, Bench.Cancellation);
        Assert.Empty(await _book.Gyles.ArrangeAsync(bitter, Wish("Moved", Stay("Left", 5, 15)), Bench.Cancellation));

        async Task<(string, VesselStay)> ShownAsync(Guid id)
        {
            GyleLine line = (await _book.Gyles.FindAsync(id, Bench.Cancellation))!;
            return (line.Name, Assert.Single(line.Stays));
        }
    }

    [Fact]
    public async Task A_gyle_that_has_started_is_not_planned_anew()
    {
        (Guid id, _) = await Bench.StartedAsync(_book);
        await Assert.ThrowsAsync<ArgumentOutOfRangeException>(() => _book.Gyles.ArrangeAsync(id, Wish("Again"), Bench.Cancellation));
    }

    [Fact]
    public async Task It_follows_its_log_and_its_vessels_with_it()
    {
        Guid id = (await _book.Gyles.PlanAsync(Wish("Mild", Stay("Left", 0, 10), new VesselStay(VesselKind.Keg, "Robin", Day(10), null)), Bench.Cancellation)).Gyle!.Value;
        await _book.Gyles.StartAsync(id, Bench.Plan, Bench.Cancellation);
        long whole = (await _book.Gyles.FindAsync(id, Bench.Cancellation))!.Portions[0].Id;
        await _book.Readings.AddAsync(whole, [new BrewAction { At = _bench.Clock.Now, What = "pitched" }], Bench.Cancellation);

        await _book.Gyles.FollowAsync(id, (_, log) => (log.Any(action => action.What == "pitched") ? GyleStatus.Fermenting : GyleStatus.Brewing, Day(12)), Bench.Cancellation);
        GyleLine line = (await _book.Gyles.FindAsync(id, Bench.Cancellation))!;
        Assert.Equal(GyleStatus.Fermenting, line.Status);
        Assert.Equal([Stay("Left", 0, 12), new(VesselKind.Keg, "Robin", Day(12), null)], line.Stays);

        // Packaged, the fermenter is free and the keg is not; finished, that is too.
        _bench.Clock.Now = _bench.Clock.Now.AddDays(5);
        await _book.Gyles.SetStatusAsync(id, GyleStatus.Packaged, Bench.Cancellation);
        Assert.Equal([Stay("Left", -5, 0), new(VesselKind.Keg, "Robin", Day(0), null)], (await _book.Gyles.FindAsync(id, Bench.Cancellation))!.Stays);
        Assert.Empty((await _book.Gyles.PlanAsync(Wish("Next", Stay("Left", 0, 10)), Bench.Cancellation)).Clashes);
        await _book.Gyles.SetStatusAsync(id, GyleStatus.Finished, Bench.Cancellation);
        Assert.Equal([Stay("Left", -5, 0)], (await _book.Gyles.FindAsync(id, Bench.Cancellation))!.Stays);
    }

    [Fact]
    public async Task A_keg_is_held_until_somebody_says_that_it_is_empty()
    {
        VesselStay keg = new(VesselKind.Keg, "Robin", Day(0), null);
        Guid id = (await _book.Gyles.PlanAsync(Wish("Mild", keg), Bench.Cancellation)).Gyle!.Value;
        Assert.NotEmpty((await _book.Gyles.PlanAsync(Wish("Next", keg with { From = Day(300) }), Bench.Cancellation)).Clashes);
        await _book.Gyles.EmptyAsync(id, VesselKind.Keg, "Robin", Bench.Cancellation);
        Assert.Empty((await _book.Gyles.PlanAsync(Wish("Next", keg with { From = Day(1) }), Bench.Cancellation)).Clashes);
    }

    private GyleWish Wish(string name, params VesselStay[] stays) => new(_recipe, name)
    {
        Stays = stays,
    };

    private VesselStay Stay(string vessel, int from, int until) => new(VesselKind.Fermenter, vessel, Day(from), Day(until));

    private DateOnly Day(int day) => DateOnly.FromDateTime(_bench.Clock.GetLocalNow().DateTime).AddDays(day);

    private GyleReading At(int hour) => new() { At = _bench.Clock.Now.AddHours(hour), Temperature = Temperature.FromCelsius(19) };
}
