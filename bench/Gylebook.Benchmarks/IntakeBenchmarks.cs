using System.Diagnostics;
using System.Globalization;
using System.Net.Http.Headers;
using System.Net.Http.Json;
using System.Runtime.CompilerServices;
using System.Security.Cryptography;
using System.Text;
using BenchmarkDotNet.Attributes;
using Gylebook.Gyles.Cellar;
using Gylebook.Store;
using Gylebook.Store.Sqlite;

namespace Gylebook.Benchmarks;

/// <summary>Readings of devices on their way into a book, each batch on disk before it is answered.</summary>
/// <remarks>Target: 3,000 a second on two cores. Says the bytes a reading before it measures.</remarks>
public class IntakeBenchmarks : IDisposable
{
    private const int Readings = 10_000;
    private const string Token = "a token for measuring";

    private readonly string _folder = Directory.CreateTempSubdirectory("gylebook-bench-").FullName;
    private readonly HttpClient _device = new();
    private Book _book = null!;
    private Process _program = null!;
    private long _float;
    private DateTimeOffset _next = new(2026, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>Readings that are in the book before it is measured: a season, and years of several floats.</summary>
    [Params(200_000, 5_000_000)]
    public int Before { get; set; }

    private string BookFile => Path.Combine(_folder, "book.sqlite");

    /// <summary>Makes a book with many readings in it, and opens it here and in the program.</summary>
    [GlobalSetup]
    public async Task PrepareAsync()
    {
        _book = await SqliteBook.OpenAsync(BookFile, TimeProvider.System);
        await _book.Demo.MarkHereAsync();
        _float = await _book.Devices.AddAsync("Float", DeviceKind.Floating, Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(Token))));
        long empty = new FileInfo(BookFile).Length;
        foreach (SensorReading[] some in Next(Before).Chunk(5_000))
        {
            await _book.Sensors.AppendAsync([new SensorBatch(_float, some)]);
        }

        await _book.BackupAsync(Path.Combine(_folder, "copy.sqlite"));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"// {(new FileInfo(Path.Combine(_folder, "copy.sqlite")).Length - empty) / (double)Before:0.0} bytes a reading"));
        _program = Process.Start(new ProcessStartInfo("dotnet", [ProgramPath(), "serve", "--book", BookFile, "--urls", "http://127.0.0.1:0"]) { RedirectStandardOutput = true })!;
        string line = await _program.StandardOutput.ReadLineAsync() ?? throw new InvalidOperationException("The program did not start.");
        _device.BaseAddress = new Uri(line.Split(' ')[4]);
        _device.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", Token);
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
        _device.Dispose();
        GC.SuppressFinalize(this);
    }

    /// <summary>Straight into the book, 500 a commit.</summary>
    [Benchmark(OperationsPerInvoke = Readings)]
    public async Task IntoTheBook()
    {
        foreach (SensorReading[] some in Next(Readings).Chunk(500))
        {
            await _book.Sensors.AppendAsync([new SensorBatch(_float, some)]);
        }
    }

    /// <summary>Over HTTP, 250 a request, one request after the other.</summary>
    [Benchmark(OperationsPerInvoke = Readings)]
    public async Task OverHttp()
    {
        foreach (SensorReading[] some in Next(Readings).Chunk(250))
        {
            await SendAsync(some);
        }
    }

    /// <summary>Over HTTP, one reading a request, sixteen devices at once: what the one pen gathers. Fewer than the door lets in in a minute.</summary>
    [Benchmark(OperationsPerInvoke = 160)]
    public Task OneByOne() => Parallel.ForEachAsync(Next(160), new ParallelOptions { MaxDegreeOfParallelism = 16 }, async (reading, _) => await SendAsync([reading]));

    /// <summary>A fortnight of a float, as a page asks for it: read, marked, thinned.</summary>
    [Benchmark]
    public async Task<int> Series()
    {
        (IReadOnlyList<SensorReading> readings, bool isSampled) = await _book.Sensors.ReadAsync(_float, new DateTimeOffset(2026, 1, 1, 0, 0, 0, TimeSpan.Zero), new DateTimeOffset(2026, 1, 15, 0, 0, 0, TimeSpan.Zero));
        return CellarSeries.Of([new DeviceReadings("Float", DeviceCalibration.None, readings) { IsSampled = isSampled }], [], default, _next).Points.Count;
    }

    private async Task SendAsync(SensorReading[] some)
    {
        using HttpResponseMessage answer = await _device.PostAsJsonAsync("intake", some.Select(reading => new { at = reading.At, gravity = reading.Gravity!.Value.Ratio, temperature = reading.Temperature!.Value.Celsius, battery = reading.BatteryVolts }));
        answer.EnsureSuccessStatusCode();
    }

    /// <summary>Readings that the book does not have yet, a minute apart.</summary>
    private List<SensorReading> Next(int count)
    {
        MadeUpFloat next = new() { Seed = "bench", From = _next, Every = TimeSpan.FromMinutes(1) };
        _next += next.Every * count;
        return [.. next.Readings(count)];
    }

    private static string ProgramPath([CallerFilePath] string here = "") =>
        Environment.GetEnvironmentVariable("GYLEBOOK_BENCH_PROGRAM")
        ?? Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "../../artifacts/bin/Gylebook/release/gylebook.dll"));
}
