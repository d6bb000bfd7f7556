using Gylebook.Tests.Shared;

namespace Gylebook.Cli.Tests;

/// <summary>The book of a release, with recipes in it and no demo, restored once by the program itself and copied for each test that wants one.</summary>
internal static class RestoredBook
{
    private static readonly Lazy<byte[]> Made = new(Make);

    /// <summary>Where the release's own book lies.</summary>
    public static string Released => RepositoryFile.PathOf("tests/Gylebook.Store.Tests/Books/0.1.0.sqlite");

    /// <summary>Puts a copy there.</summary>
    public static void CopyTo(string file) => File.WriteAllBytes(file, Made.Value);

    private static byte[] Make()
    {
        string folder = Directory.CreateTempSubdirectory("gylebook-restored-").FullName, book = Path.Combine(folder, "book.sqlite");
        Assert.Equal(0, GylebookProgram.Run(["restore", Released, "--book", book]).ExitCode);
        byte[] made = File.ReadAllBytes(book);
        Directory.Delete(folder, recursive: true);
        return made;
    }
}
