using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace Gylebook.Web.Hosting.Entry;

/// <summary>What https shows a browser: a certificate from elsewhere, or one that Gylebook makes for this machine.</summary>
/// <param name="Leaf">The certificate itself, with its key.</param>
/// <param name="Chain">Certificates between it and who vouches for it.</param>
/// <param name="IsOwn">Whether Gylebook made it, so that nobody vouches for it.</param>
public sealed record ServerCertificate(X509Certificate2 Leaf, X509Certificate2Collection Chain, bool IsOwn)
{
    /// <summary>What a browser shows of it: SHA-256, two hexadecimal digits at a time.</summary>
    public string Fingerprint => string.Join(':', Leaf.GetCertHash(HashAlgorithmName.SHA256).Select(one => one.ToString("X2", System.Globalization.CultureInfo.InvariantCulture)));

    /// <summary>A certificate from elsewhere.</summary>
    /// <param name="file">Text (PEM) with the certificate first, and those that vouch for it after.</param>
    /// <param name="keyFile">Text with its key; null when that is in the same file.</param>
    /// <exception cref="CryptographicException">They are no such texts, or do not belong together.</exception>
    /// <exception cref="IOException">A file cannot be read.</exception>
    public static ServerCertificate From(string file, string? keyFile)
    {
        string text = File.ReadAllText(file);
        X509Certificate2Collection chain = [];
        chain.ImportFromPem(text);
        return new(Usable(text, keyFile is null ? text : File.ReadAllText(keyFile)), chain, IsOwn: false);
    }

    /// <summary>The certificate that lies beside the book; made when there is none, when it runs out, or when this machine has a name it lacks.</summary>
    /// <param name="file">Where it lies, with its key, for its owner alone to read.</param>
    /// <param name="names">Names and addresses it has to be good for.</param>
    /// <param name="clock">The time.</param>
    public static ServerCertificate Own(string file, IReadOnlyList<string> names, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(clock);
        if (File.Exists(file) && Kept(file) is { } kept && kept.NotAfter > clock.GetUtcNow().UtcDateTime.AddDays(DaysToSpare) && names.All(name => IsFor(kept, name)))
        {
            return new(kept, [], IsOwn: true);
        }

        string made = Make(names, clock.GetUtcNow());
        KeepForOwnerAlone(file, made);
        return new(Usable(made, made), [], IsOwn: true);
    }

    /// <summary>Some browsers take no longer one: 825 days, from memory.</summary>
    private const int Days = 800;

    private const int DaysToSpare = 30;

    private static X509Certificate2? Kept(string file)
    {
        try
        {
            string text = File.ReadAllText(file);
            return Usable(text, text);
        }
        catch (CryptographicException)
        {
            // Damaged: made anew.
            return null;
        }
    }

    private static bool IsFor(X509Certificate2 certificate, string name) =>
        certificate.Extensions.OfType<X509SubjectAlternativeNameExtension>().Any(names => IPAddress.TryParse(name, out IPAddress? address)
            ? names.EnumerateIPAddresses().Contains(address)
            : names.EnumerateDnsNames().Contains(name, StringComparer.OrdinalIgnoreCase));

    /// <summary>A certificate for a server and nothing else, with its key, as text (RFC 5280, RFC 7468).</summary>
    private static string Make(IReadOnlyList<string> names, DateTimeOffset now)
    {
        using ECDsa key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        CertificateRequest request = new("CN=Gylebook on this network", key, HashAlgorithmName.SHA256);
        SubjectAlternativeNameBuilder alternatives = new();
        foreach (string name in names)
        {
            if (IPAddress.TryParse(name, out IPAddress? address))
            {
                alternatives.AddIpAddress(address);
            }
            else
            {
                alternatives.AddDnsName(name);
            }
        }

        request.CertificateExtensions.Add(alternatives.Build());
        request.CertificateExtensions.Add(new X509BasicConstraintsExtension(certificateAuthority: false, hasPathLengthConstraint: false, 0, critical: true));
        request.CertificateExtensions.Add(new X509KeyUsageExtension(X509KeyUsageFlags.DigitalSignature, critical: true));
        request.CertificateExtensions.Add(new X509EnhancedKeyUsageExtension([new Oid("1.3.6.1.5.5.7.3.1")], critical: false));
        using X509Certificate2 made = request.CreateSelfSigned(now.AddHours(-1), now.AddDays(Days));
        return made.ExportCertificatePem() + "\n" + key.ExportPkcs8PrivateKeyPem() + "\n";
    }

    /// <summary>By way of PKCS #12, since one system cannot serve with a key that lives in memory alone.</summary>
    private static X509Certificate2 Usable(string certificate, string key)
    {
        using X509Certificate2 read = X509Certificate2.CreateFromPem(certificate, key);
        return X509CertificateLoader.LoadPkcs12(read.Export(X509ContentType.Pkcs12), password: null);
    }

    private static void KeepForOwnerAlone(string file, string text)
    {
        string next = file + ".next";
        File.Delete(next);
        FileStreamOptions how = new() { Mode = FileMode.CreateNew, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
        {
            how.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        using (StreamWriter pen = new(next, how))
        {
            pen.Write(text);
        }

        File.Move(next, file, overwrite: true);
    }
}
