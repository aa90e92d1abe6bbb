using Practice.Service.Courses;

namespace Practice.Web.Features.Courses;

/// <summary>What comes into a course from outside and what goes out of it: the file and the plan.</summary>
internal sealed record CourseHandover(ReadCourseFile Read, PutCourseInPlan Put);
