using System.Collections.Immutable;

namespace Practice.Domain.Course;

/// <summary>What became of reading a file: <see cref="GpxCourse"/> or <see cref="GpxRefused"/>.</summary>
public abstract record GpxReading;

/// <summary>The file holds a course.</summary>
/// <param name="Profile">The course.</param>
public sealed record GpxCourse(CourseProfile Profile) : GpxReading;

/// <summary>The file can not be read as a course.</summary>
/// <param name="Reason">What is wrong and what to do, for a person.</param>
/// <param name="Line">Where in the file; null when the whole is meant.</param>
public sealed record GpxRefused(string Reason, int? Line = null) : GpxReading;
