using Gylebook.Web.Hosting.Entry;

namespace Gylebook.Web.Tests.Hosting;

/// <summary>The certificate beside the book: the same as long as it serves, and a new one when it does not.</summary>
public sealed class ServerCertificateTests : IDisposable
{
    private static readonly string[] Names = ["localhost", "shed", "shed.local", "192.168.1.20", "fd00::2"];

    private readonly string _folder = Directory.CreateTempSubdirectory("gylebook-certificate-").FullName;

    private readonly SteppedClock _clock = new();

    private string Kept => Path.Combine(_folder, "book.sqlite.https.pem");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void It_names_each_name_is_no_authority_and_serves_alone()
    {
        ServerCertificate made = ServerCertificate.Own(Kept, Names, _clock);

        Assert.All(Names.Where(name => !name.Contains(':', StringComparison.Ordinal)), name => Assert.True(made.Leaf.MatchesHostname(name), name));
        Assert.False(made.Leaf.MatchesHostname("elsewhere.example"));
        Assert.True(made.Leaf.HasPrivateKey);
        Assert.False(made.Leaf.Extensions.OfType<System.Security.Cryptography.X509Certificates.X509BasicConstraintsExtension>().Single().CertificateAuthority);
        Assert.Matches("^([0-9A-F]{2}:){31}[0-9A-F]{2}$", made.Fingerprint);
    }

    [Fact]
    public void It_stays_until_it_runs_out()
    {
        string first = ServerCertificate.Own(Kept, Names, _clock).Fingerprint;
        _clock.Step(TimeSpan.FromDays(700));
        Assert.Equal(first, ServerCertificate.Own(Kept, Names, _clock).Fingerprint);
        Assert.Equal(first, ServerCertificate.Own(Kept, Names[..2], _clock).Fingerprint);
        _clock.Step(TimeSpan.FromDays(80));
        Assert.NotEqual(first, ServerCertificate.Own(Kept, Names, _clock).Fingerprint);
    }

    [Theory]
    [InlineData("192.168.1.21")]
    [InlineData("brewery.example")]
    public void A_name_it_lacks_makes_another(string name)
    {
        string first = ServerCertificate.Own(Kept, Names, _clock).Fingerprint;
        ServerCertificate next = ServerCertificate.Own(Kept, [.. Names, name], _clock);
        Assert.NotEqual(first, next.Fingerprint);
        Assert.True(next.Leaf.MatchesHostname(name));
    }

    [Fact]
    public void A_damaged_file_makes_another()
    {
        string first = ServerCertificate.Own(Kept, Names, _clock).Fingerprint;
        File.WriteAllText(Kept, File.ReadAllText(Kept)[..200]);
        Assert.NotEqual(first, ServerCertificate.Own(Kept, Names, _clock).Fingerprint);
    }
}
