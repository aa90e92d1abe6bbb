using Practice.Domain.Course;
using Practice.Domain.Races;
using Practice.Service.Plans;

namespace Practice.Service.Courses;

/// <summary>Reads a file that somebody hands in as the course of a race. Nothing of it is kept but the profile.</summary>
public sealed class ReadCourseFile(Stove stove)
{
    /// <param name="file">The file as it comes in.</param>
    /// <param name="race">The race it should be the course of.</param>
    /// <param name="cancel">Cancels.</param>
    public async Task<GpxReading> Run(Stream file, Race race, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(race);
        using var whole = new MemoryStream();
        try
        {
            await file.CopyToAsync(whole, cancel);
        }
        catch (IOException)
        {
            return new GpxRefused(
                $"The file did not arrive whole, or is larger than {GpxFile.LargestBytes / 1_000_000} MB."
            );
        }
        whole.Position = 0;
        return await stove.Run(() => GpxFile.Read(whole, race.DistanceKm, race.Discipline));
    }
}
