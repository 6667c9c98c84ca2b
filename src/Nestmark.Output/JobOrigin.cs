using System.Security.Cryptography;
using System.Text;
using Nestmark.Yardage;

namespace Nestmark.Output;

/// <summary>The tag in every output file by which the program knows which job it came from.</summary>
public static class JobOrigin
{
    /// <summary>The tag of a job: "nestmark-job:" and 32 hexadecimal digits made from its title and the name of its file.</summary>
    /// <remarks>Plain ASCII, so that it reads the same in JSON, SVG and PDF. Two jobs with the same title and file name share it.</remarks>
    public static string Of(Job job)
    {
        byte[] hash = SHA256.HashData(Encoding.UTF8.GetBytes(job.Title + "\n" + job.Source));
        return "nestmark-job:" + Convert.ToHexStringLower(hash.AsSpan(0, 16));
    }
}
