using System.ComponentModel;
using System.Net;
using System.Security.Cryptography;
using Gylebook.Store;
using Gylebook.Store.Sqlite;
using Gylebook.Terminal;
using Gylebook.Web.Demo;
using Gylebook.Web.Hosting;
using Gylebook.Web.Hosting.Entry;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>gylebook serve [--book FILE] [--urls URL;URL] [--lan] [--host NAME] [--cert FILE] [--cert-key FILE]</summary>
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

        /// <summary>Whether other devices of the local network are to reach the book.</summary>
        [CommandOption("--lan")]
        [Description("Opens the book to the local network, on http and https, and asks for a password.")]
        public bool Lan { get; init; }

        /// <summary>Other names of this machine.</summary>
        [CommandOption("--host <NAME>")]
        [Description("Another name the book goes by, such as one of your router or proxy; asks for a password. May be given more than once.")]
        public string[] Hosts { get; init; } = [];

        /// <summary>A certificate for https.</summary>
        [CommandOption("--cert <FILE>")]
        [Description("A certificate for https (PEM), its chain after it. Without it, Gylebook makes one of its own beside the book.")]
        public string? Cert { get; init; }

        /// <summary>The key of that certificate.</summary>
        [CommandOption("--cert-key <FILE>")]
        [Description("The key of that certificate (PEM). Without it, it is in the same file.")]
        public string? CertKey { get; init; }

        /// <summary>The addresses, one by one.</summary>
        internal string[] Addresses => Urls is not null ? Urls.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            : Lan ? [WebBook.LanUrl, WebBook.SecureLanUrl]
            : [WebBook.DefaultUrl];

        /// <inheritdoc/>
        public override ValidationResult Validate()
        {
            ValidationResult values = CommandLine.NoneLacksItsValue(
                [("--book", "a file", Book), ("--cert", "a file", Cert), ("--cert-key", "a file", CertKey), .. Hosts.Select(host => ("--host", "a name", (string?)host))]);
            return !values.Successful ? values
                : Urls == CommandLine.MissingValue || Addresses.Length == 0 ? ValidationResult.Error("Option '--urls' needs an address after it, such as http://localhost:5080.")
                : Addresses.Select(ListenAddress.Fault).FirstOrDefault(fault => fault is not null) is { } odd ? ValidationResult.Error(odd)
                : Hosts.FirstOrDefault(host => Uri.CheckHostName(host) == UriHostNameType.Unknown) is { } name ? ValidationResult.Error($"{name}: a name is written without http:// and without a port, such as gylebook.example.")
                : Cert is null && CertKey is not null ? ValidationResult.Error("Option '--cert-key' needs '--cert' beside it.")
                : Cert is not null && !Addresses.Any(ListenAddress.IsSecure) ? ValidationResult.Error("Option '--cert' needs an address of https: '--lan', or '--urls' with one.")
                : ValidationResult.Success();
        }
    }

    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        await using Book book = await SqliteBook.OpenAsync(
            BookLocation.Find(settings.Book), TimeProvider.System, cancellation: cancellationToken);
        bool isNew = await LanternShed.MoveInAsync(book, cancellationToken);
        string[] names = [.. MachineNames.Addresses().Select(address => address.ToString()), .. MachineNames.Names, .. settings.Hosts.Select(host => host.Trim('[', ']'))];
        SiteDoor door = new(settings.Addresses, settings.Lan, settings.Hosts, CertificateOf(settings, book.File, names));
        await using WebApplication site = await WebBook.BuildAsync(book, door, TimeProvider.System);
        await site.StartAsync(cancellationToken);
        Console.WriteLine($"Gylebook is open at {string.Join(" and ", site.Urls)} with the book {book.File}; Ctrl+C closes it.");
        if (door.IsForOthers || !WebBook.IsForThisMachineOnly(site))
        {
            await TellAsync(site, door, names, cancellationToken);
        }

        if (isNew)
        {
            await BrewDemoAsync(book, cancellationToken);
        }

        await site.WaitForShutdownAsync(cancellationToken);
        return 0;
    }

    /// <summary>The demo's gyles are no reason to close a book: without them it is a smaller demo.</summary>
    private static async Task BrewDemoAsync(Book book, CancellationToken cancellation)
    {
        try
        {
            await LanternShed.BrewAsync(book, TimeProvider.System, cancellation);
        }
        catch (Exception fault) when (fault is not OperationCanceledException)
        {
            Console.Error.WriteLine(CommandLine.OneLine($"The demo's gyles could not be put in: {fault.Message}"));
        }
    }

    private static ServerCertificate? CertificateOf(Settings settings, string book, IReadOnlyList<string> names)
    {
        if (!settings.Addresses.Any(ListenAddress.IsSecure))
        {
            return null;
        }

        try
        {
            return settings.Cert is { } file ? ServerCertificate.From(file, settings.CertKey)
                : ServerCertificate.Own(book + ".https.pem", ["localhost", IPAddress.Loopback.ToString(), IPAddress.IPv6Loopback.ToString(), .. names], TimeProvider.System);
        }
        catch (CryptographicException fault)
        {
            throw new InvalidOperationException($"{settings.Cert ?? book + ".https.pem"}: this certificate cannot be used. {fault.Message}", fault);
        }
    }

    /// <summary>How others get in: addresses, fingerprint, the code of first use, and a picture for a phone's camera.</summary>
    private static async Task TellAsync(WebApplication site, SiteDoor door, IReadOnlyList<string> names, CancellationToken cancellation)
    {
        string[] reached = [.. site.Urls.SelectMany(url => ListenAddress.Reached(url, names)).Distinct()];
        foreach (string url in reached)
        {
            Console.WriteLine($"  {url}");
        }

        if (door.Certificate is { IsOwn: true } own)
        {
            Console.WriteLine($"The certificate is Gylebook's own, so a browser warns of it. Its SHA-256 fingerprint: {own.Fingerprint}");
        }

        if (await site.Services.GetRequiredService<Passwords>().HasOwnerAsync(cancellation))
        {
            Console.WriteLine("It asks for the password.");
        }
        else
        {
            Console.WriteLine($"It has no password yet. Whoever opens it first chooses one, with this code: {site.Services.GetRequiredService<FirstUse>().Code}");
        }

        if (!Console.IsOutputRedirected && (reached.FirstOrDefault(ListenAddress.IsSecure) ?? reached.FirstOrDefault()) is { } phone)
        {
            Console.Write(QrText.Of(phone));
        }
    }
}
