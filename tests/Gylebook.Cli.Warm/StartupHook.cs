using System.Globalization;
using System.Reflection;
using System.Text;
using System.Text.Json;

/// <summary>Keeps the program warm for tests: its first line is reached once for each list of arguments that comes in, not once for each process.</summary>
/// <remarks>
/// The runtime calls it, by this name, in the program's own process before the program. What the program says goes out as
/// ever; after each run a NUL ends both outputs, which the program itself never writes, with the exit code before one more.
/// </remarks>
internal static class StartupHook
{
    private const char End = '\0';

    /// <summary>Runs the program until no more arguments come.</summary>
    public static void Initialize()
    {
        MethodInfo program = Assembly.Load("gylebook").EntryPoint!;
        TextWriter errors = Console.Error;
        using Stream output = Console.OpenStandardOutput(), error = Console.OpenStandardError();
        while (Console.In.ReadLine() is { } arguments)
        {
            // The program puts its guard over what it finds.
            Console.SetError(errors);
            int exitCode = (int)program.Invoke(null, [JsonSerializer.Deserialize<string[]>(arguments)])!;
            Console.Out.Flush();
            Console.Error.Flush();
            output.Write(Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{End}{exitCode}{End}")));
            error.Write(Encoding.UTF8.GetBytes([End]));
        }

        Environment.Exit(0);
    }
}
