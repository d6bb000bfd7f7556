namespace Gylebook.Tests.Shared;

/// <summary>The program itself, as it was built beside the tests.</summary>
internal static class BuiltProgram
{
    // artifacts/bin/Gylebook.Cli.Tests/release/ and artifacts/bin/Gylebook/release/: one configuration, two projects.
    public static string File
    {
        get
        {
            DirectoryInfo mine = new(AppContext.BaseDirectory.TrimEnd(Path.DirectorySeparatorChar));
            return Path.Combine(mine.Parent!.Parent!.FullName, "Gylebook", mine.Name, "gylebook.dll");
        }
    }
}
