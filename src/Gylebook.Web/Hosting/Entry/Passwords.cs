using System.Security.Claims;
using System.Security.Cryptography;
using System.Text;
using Gylebook.Store;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Options;

namespace Gylebook.Web.Hosting.Entry;

/// <summary>The two passwords of a book: its owner's and a helper's. The book keeps what they hash to, and nothing else does.</summary>
/// <param name="book">The book.</param>
public sealed class Passwords(Book book)
{
    /// <summary>Common practice, no source.</summary>
    public const int Shortest = 10;

    /// <summary>More than anyone types; hashing a book would be work for nothing.</summary>
    public const int Longest = 200;

    /// <summary>Rounds of PBKDF2 with HMAC-SHA512; from memory, of OWASP's password storage sheet.</summary>
    private const int Rounds = 210_000;

    private static readonly PasswordHasher<string> Hasher = new(Options.Create(new PasswordHasherOptions { IterationCount = Rounds }));

    /// <summary>Whether the book has an owner's password yet.</summary>
    public async Task<bool> HasOwnerAsync(CancellationToken cancellation = default) => await HashAsync(Who.Owner, cancellation) is not null;

    /// <summary>Whether a helper may come in.</summary>
    public async Task<bool> HasHelperAsync(CancellationToken cancellation = default) => await HashAsync(Who.Helper, cancellation) is not null;

    /// <summary>Whose password that is; null for nobody's.</summary>
    public async Task<string?> RoleOfAsync(string password, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(password);
        string? role = null;
        if (password.Length is > 0 and <= Longest)
        {
            foreach (string asked in new[] { Who.Owner, Who.Helper })
            {
                if (await HashAsync(asked, cancellation) is { } hash && Hasher.VerifyHashedPassword(asked, hash, password) != PasswordVerificationResult.Failed)
                {
                    role ??= asked;
                }
            }
        }

        return role;
    }

    /// <summary>Sets a password; whoever came in with the old one has to come in anew.</summary>
    /// <param name="role"><see cref="Who.Owner"/> or <see cref="Who.Helper"/>.</param>
    /// <param name="password">The new one.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <returns>What is wrong with it; null when it is set.</returns>
    public async Task<string?> SetAsync(string role, string password, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(password);
        if (password.Length is < Shortest or > Longest)
        {
            return Invariant($"A password has {Shortest} to {Longest} characters; this one has {password.Length}.");
        }

        if (await RoleOfAsync(password, cancellation) is { } other && other != role)
        {
            return "Owner and helper need two different passwords.";
        }

        await book.Settings.SetAsync(Key(role), Hasher.HashPassword(role, password), cancellation);
        return null;
    }

    /// <summary>Lets no helper in any more.</summary>
    public Task RemoveHelperAsync(CancellationToken cancellation = default) => book.Settings.SetAsync(Key(Who.Helper), "", cancellation);

    /// <summary>What changes when that password does: the cookie holds it, and is worth nothing once they differ. Null without a password.</summary>
    public async Task<string?> StampAsync(string role, CancellationToken cancellation = default) =>
        await HashAsync(role, cancellation) is { } hash ? Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(hash))) : null;

    /// <summary>Whether somebody who came in with a password may stay: it is the password still.</summary>
    public async Task<bool> MayStayAsync(ClaimsPrincipal who, CancellationToken cancellation = default) =>
        Who.RoleOf(who) is { } role && await StampAsync(role, cancellation) is { } stamp && stamp == Who.StampOf(who);

    private static string Key(string role) => role is Who.Owner or Who.Helper
        ? $"{role}.password"
        : throw new ArgumentOutOfRangeException(nameof(role), role, $"A password is the {Who.Owner}'s or a {Who.Helper}'s.");

    private async Task<string?> HashAsync(string role, CancellationToken cancellation) =>
        await book.Settings.FindAsync(Key(role), cancellation) is { Length: > 0 } hash ? hash : null;
}
