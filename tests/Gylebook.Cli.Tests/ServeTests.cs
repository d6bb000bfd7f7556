using System.Net;
using System.Net.Sockets;

namespace Gylebook.Cli.Tests;

/// <summary>gylebook serve, where it refuses; what it serves is looked at in a browser elsewhere.</summary>
public sealed class ServeTests
{
    [Theory]
    [InlineData("--book")]
    [InlineData("--urls")]
    [InlineData("serve", "--book")]
    [InlineData("serve", "--urls", ";")]
    [InlineData("serve", "--urls", "ftp://localhost:5080")]
    [InlineData("serve", "--host", "http://gylebook.example")]
    [InlineData("serve", "--host")]
    [InlineData("serve", "--cert", "some.pem")]
    [InlineData("--lan", "--cert-key", "some.pem")]
    [InlineData("password", "--remove")]
    [InlineData("serve", "--urls", "localhost:5080")]
    [InlineData("serve", "--port", "5080")]
    public void Invalid_usage_gets_one_line_and_exit_code_2(params string[] arguments)
    {
        Ran ran = GylebookProgram.Run(arguments);
        Assert.Equal(("", 2), (ran.Output, ran.ExitCode));
        Assert.Single(ran.Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }

    [Fact]
    public void A_port_that_is_taken_is_told_in_one_line()
    {
        using TcpListener taken = new(IPAddress.Loopback, 0);
        taken.Start();
        string url = $"http://127.0.0.1:{((IPEndPoint)taken.LocalEndpoint).Port}";
        string folder = Directory.CreateTempSubdirectory("gylebook-serve-").FullName;
        Ran ran = GylebookProgram.Run(["serve", "--book", Path.Combine(folder, "book.sqlite"), "--urls", url]);
        Directory.Delete(folder, recursive: true);
        Assert.Equal(("", 1), (ran.Output, ran.ExitCode));
        Assert.Contains("address already in use", Assert.Single(ran.Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_no_book_is_left_alone_and_told()
    {
        string folder = Directory.CreateTempSubdirectory("gylebook-serve-").FullName;
        string file = Path.Combine(folder, "shopping.txt");
        File.WriteAllText(file, "eggs, milk and a good many other things that make no book");
        Ran ran = GylebookProgram.Run(["serve", "--book", file, "--urls", "http://127.0.0.1:0"]);
        string after = File.ReadAllText(file);
        Directory.Delete(folder, recursive: true);
        Assert.Equal(("", 1), (ran.Output, ran.ExitCode));
        Assert.Contains("shopping.txt", Assert.Single(ran.Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
        Assert.StartsWith("eggs", after, StringComparison.Ordinal);
    }
}
