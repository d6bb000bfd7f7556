using System.ComponentModel;
using Gylebook.Store;
using Gylebook.Store.Sqlite;
using Gylebook.Terminal;
using Gylebook.Web.Demo;
using Gylebook.Web.Hosting;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>gylebook serve [--book FILE] [--urls URL;URL]</summary>
internal sealed class ServeVerb : AsyncCommand<ServeVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : CommandSettings
    {
        /// <summary>The book's file.</summary>
        [CommandOption("--book <FILE>")]
        [Description("The book's file; made when there is none. Without it, the book in your data folder.")]
        public string? Book { get; init; }

        /// <summary>Where to listen.</summary>
        [CommandOption("--urls <URLS>")]
        [Description("Addresses to listen on, with a semicolon between. Without it, http://localhost:5080, for this machine only.")]
        public string? Urls { get; init; }

        /// <summary>The addresses, one by one.</summary>
        internal string[] Addresses => Urls is null
            ? [WebBook.DefaultUrl]
            : Urls.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

        /// <inheritdoc/>
        public override ValidationResult Validate() =>
            Book == CommandLine.MissingValue ? ValidationResult.Error("Option '--book' needs a file after it.")
            : Urls == CommandLine.MissingValue || Addresses.Length == 0 ? ValidationResult.Error("Option '--urls' needs an address after it, such as http://localhost:5080.")
            : Addresses.Select(ListenAddress.Fault).FirstOrDefault(fault => fault is not null) is { } odd ? ValidationResult.Error(odd)
            : ValidationResult.Success();
    }

    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        await using Book book = await SqliteBook.OpenAsync(
            BookLocation.Find(settings.Book), TimeProvider.System, cancellation: cancellationToken);
        bool isNew = await LanternShed.MoveInAsync(book, cancellationToken);
        await using WebApplication site = await WebBook.BuildAsync(book, settings.Addresses, TimeProvider.System);
        await site.StartAsync(cancellationToken);
        Console.WriteLine($"Gylebook is open at {string.Join(" and ", site.Urls)} with the book {book.File}; Ctrl+C closes it.");
        if (!WebBook.IsForThisMachineOnly(site))
        {
            Console.Error.WriteLine("Everyone who can reach this address can read and change the book.");
        }

        if (isNew)
        {
            await LanternShed.BrewAsync(book, TimeProvider.System, cancellationToken);
        }

        await site.WaitForShutdownAsync(cancellationToken);
        return 0;
    }
}
