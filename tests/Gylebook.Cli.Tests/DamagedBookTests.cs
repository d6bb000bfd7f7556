using System.Diagnostics;
using System.Text;
using Gylebook.Tests.Shared;

namespace Gylebook.Cli.Tests;

/// <summary>gylebook check, backup, restore and serve with a book that a disk has changed, or on a disk that is full.</summary>
public sealed class DamagedBookTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("gylebook-damaged-").FullName;

    private string Book => Path("book.sqlite");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string Path(string name) => System.IO.Path.Combine(_folder, name);

    [Fact]
    public void A_sound_book_is_found_sound()
    {
        MakeBook();

        Ran ran = GylebookProgram.Run(["check", Book]);

        Assert.Equal(("Nothing found.\n", "", 0), (ran.Output, ran.Errors, ran.ExitCode));
    }

    [Fact]
    public void A_book_of_an_older_gylebook_says_what_to_do_first()
    {
        File.Copy(RestoredBook.Released, Book);

        Ran ran = GylebookProgram.Run(["check", Book]);

        Assert.Equal(1, ran.ExitCode);
        Assert.Contains("older Gylebook", ran.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_flipped_bit_is_named_by_check_and_refused_by_backup_and_restore()
    {
        MakeBook();
        Flip("less water");

        Ran check = GylebookProgram.Run(["check", Book, "--texts", Path("rescued")]);
        Assert.Equal(1, check.ExitCode);
        Assert.Contains("\"Châtaigne Mild", check.Errors, StringComparison.Ordinal);
        Assert.Contains("newest sound text", check.Errors, StringComparison.Ordinal);
        Assert.Contains("[book.damaged]", check.Errors, StringComparison.Ordinal);
        Assert.Contains("Châtaigne Mild", File.ReadAllText(Assert.Single(Directory.GetFiles(Path("rescued")))), StringComparison.Ordinal);

        Ran backup = GylebookProgram.Run(["backup", Path("copy.sqlite"), "--book", Book]);
        Assert.Equal(1, backup.ExitCode);
        Assert.Contains("Châtaigne Mild", backup.Errors, StringComparison.Ordinal);
        Assert.False(File.Exists(Path("copy.sqlite")));
        Assert.Equal(1, GylebookProgram.Run(["restore", Book, "--book", Path("other.sqlite")]).ExitCode);
        Assert.Equal(0, GylebookProgram.Run(["backup", Path("copy.sqlite"), "--book", Book, "--even-damaged"]).ExitCode);
    }

    [Fact]
    public async Task The_running_program_finds_a_flipped_bit_by_itself()
    {
        MakeBook();
        Flip("less water");

        await using ServedBook served = await ServedBook.StartAsync(Book, "http://127.0.0.1:0");
        await served.WaitForErrorAsync("is damaged");

        Assert.Contains("Châtaigne Mild", served.Errors, StringComparison.Ordinal);
    }

    /// <remarks>
    /// Not a full disk but a process that may not write one byte into any file (RLIMIT_FSIZE): as strict, and to be had
    /// everywhere but on Windows.
    /// </remarks>
    [Fact]
    public async Task A_book_where_nothing_can_be_written_opens_for_reading()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        MakeBook();
        File.Delete(Book + "-shm");
        ProcessStartInfo start = new("/bin/sh", ["-c", "trap '' XFSZ; ulimit -f 0; exec dotnet \"$0\" serve --book \"$1\" --urls http://127.0.0.1:0", BuiltProgram.File, Book])
        {
            RedirectStandardOutput = true,
        };
        start.Environment["DOTNET_EnableWriteXorExecute"] = "0";
        start.Environment["DOTNET_EnableDiagnostics"] = "0";
        using Process cramped = Process.Start(start)!;
        try
        {
            string line = await cramped.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken) ?? "";
            Assert.StartsWith("Gylebook is open at", line, StringComparison.Ordinal);
            using HttpClient browser = new();
            string page = await browser.GetStringAsync(new Uri(line.Split(' ')[4] + "/recipes"), TestContext.Current.CancellationToken);
            Assert.Contains("Ch&#xE2;taigne Mild", page, StringComparison.Ordinal);
        }
        finally
        {
            cramped.Kill();
            await cramped.WaitForExitAsync(TestContext.Current.CancellationToken);
        }
    }

    /// <summary>A released book, brought up to date by a backup of it.</summary>
    private void MakeBook()
    {
        File.Copy(RestoredBook.Released, Path("old.sqlite"));
        Assert.Equal(0, GylebookProgram.Run(["backup", Book, "--book", Path("old.sqlite")]).ExitCode);
    }

    /// <summary>Flips a bit in each place where that text stands.</summary>
    private void Flip(string text)
    {
        byte[] bytes = File.ReadAllBytes(Book);
        byte[] wanted = Encoding.UTF8.GetBytes(text);
        int flipped = 0;
        for (int at = 0; at <= bytes.Length - wanted.Length; at++)
        {
            if (bytes.AsSpan(at, wanted.Length).SequenceEqual(wanted))
            {
                bytes[at] ^= 1;
                flipped++;
            }
        }

        Assert.NotEqual(0, flipped);
        File.WriteAllBytes(Book, bytes);
    }
}
