using System.Globalization;
using Bunit;
using Gylebook.Pictures;
using Gylebook.Store;
using Gylebook.Store.Sqlite;
using Gylebook.Web.Features.Devices;
using Gylebook.Web.Features.Gyles;
using Gylebook.Web.Features.Gyles.Cellar;
using Gylebook.Web.Features.Gyles.Glass;
using Gylebook.Web.Features.Gyles.Packaging;
using Gylebook.Web.Features.Publishing;
using Gylebook.Web.Features.Recipes.Showing;
using Gylebook.Web.Layout;
using Gylebook.Web.Reading;
using Microsoft.AspNetCore.Components;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;

namespace Gylebook.Web.Tests;

/// <summary>What a page needs: a book of its own in a file, a clock that stands, one country whatever the machine says.</summary>
public abstract class GylebookTestContext : BunitContext, IAsyncLifetime
{
    private readonly string _folder = Directory.CreateTempSubdirectory("gylebook-web-").FullName;

    protected GylebookTestContext()
    {
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        CultureInfo.CurrentUICulture = CultureInfo.InvariantCulture;
        JSInterop.Mode = JSRuntimeMode.Loose;
        DefaultWaitTimeout = TimeSpan.FromSeconds(10);
        Services.AddSingleton<TimeProvider>(Clock);

        // Bands come when they are ready: a test that wants them asks for them.
        Services.AddSingleton(new BandDraws(0));
    }

    protected static CancellationToken Cancellation => Xunit.TestContext.Current.CancellationToken;

    /// <summary>The clock: it moves only when told.</summary>
    protected SteppedClock Clock { get; } = new();

    /// <summary>The disk under the book: it can run full.</summary>
    protected FullDisk Disk { get; } = new();

    protected string BookFile => Path.Combine(_folder, "book.sqlite");

    protected Book Book { get; private set; } = null!;

    protected GyleDesk Gyles => Services.GetRequiredService<GyleDesk>();

    protected Reader Reader => Services.GetRequiredService<Reader>();

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        await (await OpenAsync()).DisposeAsync();
        var options = SqliteBook.Options(BookFile, SqliteBook.Patience, Disk);
        Book = new Book(SqliteBook.Access(options, Clock, BookFile), BookFile);
        Services.AddSingleton(Book);
        Services.AddSingleton(new ReaderChoice(ReaderUnits.Metric, Themes.System));
        Services.AddSingleton<Reader>();
        Services.AddSingleton(new GyleDesk(Book, Clock));
        Services.AddScoped<CellarDesk>().AddScoped<HarvestDesk>();
        Services.AddScoped<PackageDesk>();
        Services.AddScoped<GlassDesk>().AddScoped<PublishDesk>();
        Services.AddSingleton(new DeviceDesk(Book));
    }

    /// <summary>The same book through another door, as another program would open it: it tells our tabs nothing.</summary>
    protected Task<Book> OpenAsync() => SqliteBook.OpenAsync(BookFile, Clock, cancellation: Cancellation);

    /// <summary>Changes the file behind everybody's back, as a failing disk would.</summary>
    protected async Task DamageAsync(string sql)
    {
        await using SqliteConnection connection = new($"Data Source={BookFile};Pooling=False");
        await connection.OpenAsync(Cancellation);
        await using SqliteCommand command = connection.CreateCommand();
        command.CommandText = sql;
        Assert.True(await command.ExecuteNonQueryAsync(Cancellation) > 0, "Nothing was damaged.");
    }

    /// <summary>A component for that reader.</summary>
    protected IRenderedComponent<T> RenderFor<T>(ReaderUnits units, Action<ComponentParameterCollectionBuilder<T>> with)
        where T : IComponent => Render<T>(parameters =>
        {
            parameters.AddCascadingValue(new Shown(units));
            with(parameters);
        });

    /// <summary>A component for a metric reader.</summary>
    protected IRenderedComponent<T> RenderMetric<T>(Action<ComponentParameterCollectionBuilder<T>>? with = null)
        where T : IComponent => RenderFor<T>(ReaderUnits.Metric, with ?? (_ => { }));

    /// <inheritdoc/>
    protected override async ValueTask DisposeAsyncCore()
    {
        await base.DisposeAsyncCore();
        await Book.DisposeAsync();
        Directory.Delete(_folder, recursive: true);
    }
}
