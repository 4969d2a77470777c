using System.Security.Cryptography;
using System.Text;
using Vessel.Export;
using Xunit;

namespace Vessel.Tests.Export;

/// <summary>Our own hash against NIST's examples (FIPS 180-4, "SHA-256 Example" 1 and 2) and against the platform's.</summary>
public sealed class Sha256Tests
{
    [Theory]
    [InlineData("abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad")]
    [InlineData("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq",
        "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1")]
    public void Examples_of_the_standard(string text, string hash) =>
        Assert.Equal(hash, Convert.ToHexStringLower(Sha256.Of(Encoding.ASCII.GetBytes(text))));

    /// <summary>Every length round a block's end, added in pieces of every size up to it.</summary>
    [Fact]
    public void Any_length_in_any_pieces_is_what_the_platform_says()
    {
        var random = new Random(1);
        for (var length = 0; length < 300; length++)
        {
            var bytes = new byte[length];
            random.NextBytes(bytes);
            var hash = new Sha256();
            for (var at = 0; at < length;)
            {
                var piece = Math.Min(random.Next(1, 100), length - at);
                hash.Add(bytes.AsSpan(at, piece));
                at += piece;
            }

            var expected = SHA256.HashData(bytes);
            Assert.Equal(expected, hash.Finished());
            Assert.Equal(expected, Sha256.Of(new MemoryStream(bytes)));
        }
    }
}
