using System.Diagnostics;
using System.Runtime.CompilerServices;
using BenchmarkDotNet.Attributes;
using Gylebook.Store;
using Gylebook.Store.Sqlite;

namespace Gylebook.Benchmarks;

/// <summary>The list of recipes in a book of many years, as a query and as a page of the running program.</summary>
/// <remarks>Target: page and search each below 150 ms. <c>GYLEBOOK_BENCH_PROGRAM</c> names another build of the program to compare with.</remarks>
public class BookBenchmarks : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("gylebook-bench-").FullName;
    private readonly HttpClient _browser = new();
    private Book _book = null!;
    private Process _program = null!;

    /// <summary>Makes the book, and opens it here and in the program.</summary>
    [GlobalSetup]
    public async Task PrepareAsync()
    {
        string file = Path.Combine(_folder, "book.sqlite");
        await LongBook.MakeAsync(file);
        _book = await SqliteBook.OpenAsync(file, TimeProvider.System);
        _program = Process.Start(new ProcessStartInfo("dotnet", [ProgramPath(), "serve", "--book", file, "--urls", "http://127.0.0.1:0"])
        {
            RedirectStandardOutput = true,
        })!;
        string line = await _program.StandardOutput.ReadLineAsync() ?? throw new InvalidOperationException("The program did not start.");
        _browser.BaseAddress = new Uri(line.Split(' ')[4]);
    }

    /// <summary>Closes all, and takes the book away.</summary>
    [GlobalCleanup]
    public async Task CloseAsync()
    {
        _program.Kill();
        await _program.WaitForExitAsync();
        await _book.DisposeAsync();
        Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    /// <summary>Lets go of the program and of the connection to it.</summary>
    public void Dispose()
    {
        _program?.Dispose();
        _browser.Dispose();
        GC.SuppressFinalize(this);
    }

    /// <summary>The query for all lines, as other pages ask it.</summary>
    [Benchmark]
    public Task<List<RecipeLine>> ListAll() => _book.Recipes.ListAsync();

    /// <summary>The query behind the page.</summary>
    [Benchmark]
    public Task<RecipesFound> ListFirst() => _book.Recipes.SearchAsync(null, 50);

    /// <summary>The query behind a key in the search box.</summary>
    [Benchmark]
    public Task<RecipesFound> Search() => _book.Recipes.SearchAsync("beer 19", 50);

    /// <summary>The page, from asking to its last byte.</summary>
    [Benchmark]
    public Task<string> Page() => _browser.GetStringAsync("recipes");

    /// <summary>The page with something searched for.</summary>
    [Benchmark]
    public Task<string> PageWithSearch() => _browser.GetStringAsync("recipes?find=beer%2019");

    private static string ProgramPath([CallerFilePath] string here = "") =>
        Environment.GetEnvironmentVariable("GYLEBOOK_BENCH_PROGRAM")
        ?? Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "../../artifacts/bin/Gylebook/release/gylebook.dll"));
}
